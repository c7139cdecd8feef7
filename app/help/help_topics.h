// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Which pages there are, and their text. A page is Markdown in resources/help, in every language
// under the same topic. Links in it: `help:TOPIC` another page, `part:SLOT/MEMBER` a field of the
// machine. Pictures are drawn by the program; help/pictures.h has their names.

#include "machine/machine.h"
#include "sizing/results.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace feedwright {

struct HelpGroup {
  QString title;
  QStringList topics;
};

/// Every topic once, in reading order.
std::vector<HelpGroup> help_groups();
QStringList all_help_topics();

/// The page of a part: of its type where its place takes several ("type/belt_loop").
QString topic_of(PartSlot slot, std::string_view type);
QString topic_of(LimitId limit); ///< "limit/whip"

/// The page that is made from the window's own menus, not stored.
inline constexpr QLatin1String keys_topic("guide/keys");
inline constexpr QLatin1String first_topic("guide/first-steps");
inline constexpr QLatin1String safety_topic("guide/safety");

/// Markdown of a stored page in the language, by default the chosen one; empty if there is none.
QString help_page(const QString& topic, const QString& language = {});
/// A page's heading; for a page without one, its topic.
QString help_title(const QString& markdown, const QString& topic);
/// A page's words without its marks, for searching.
QString help_words(const QString& markdown);

/// A link of a page, taken apart.
struct HelpLink {
  enum class To : std::uint8_t { page, part, elsewhere };
  To to = To::elsewhere;
  QString topic; ///< of a page
  PartSlot slot = PartSlot::drive;
  QString member; ///< of a part; may be empty
};
HelpLink read_help_link(const QString& link);

} // namespace feedwright
