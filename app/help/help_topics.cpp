// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/help_topics.h"

#include "text/language.h"
#include "text/text_of.h"

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>

#include <optional>

namespace feedwright {

namespace {

QString text(const char* words) {
  return QCoreApplication::translate("Help", words);
}

std::optional<PartSlot> slot_named(const QString& name) {
  for (std::size_t i = 0; i < slot_count; ++i) {
    if (text_of(slot_name(static_cast<PartSlot>(i))) == name) {
      return static_cast<PartSlot>(i);
    }
  }
  return std::nullopt;
}

QStringList limit_topics(LimitScale scale) {
  QStringList topics;
  for (const LimitDescriptor& limit : limit_descriptors()) {
    if (limit.scale == scale) {
      topics << topic_of(limit.id);
    }
  }
  return topics;
}

/// The places of an axis and of the machine, each followed by what may stand in it.
QStringList part_topics() {
  QStringList topics;
  for (std::size_t i = 0; i < slot_count; ++i) {
    const auto slot = static_cast<PartSlot>(i);
    topics << QStringLiteral("part/") + text_of(slot_name(slot));
    for (const std::string_view type : part_types(slot)) {
      topics << topic_of(slot, type);
    }
  }
  return topics;
}

} // namespace

std::vector<HelpGroup> help_groups() {
  return {
      {text(QT_TRANSLATE_NOOP("Help", "Using the program")),
       {first_topic, QStringLiteral("guide/numbers"), QStringLiteral("guide/ladders"),
        QStringLiteral("guide/studies"), QStringLiteral("guide/working"),
        QStringLiteral("guide/stretch"), QStringLiteral("guide/sheet"), safety_topic, keys_topic}},
      {text(QT_TRANSLATE_NOOP("Help", "Parts")), part_topics()},
      {text(QT_TRANSLATE_NOOP("Help", "Limits of feed")), limit_topics(LimitScale::feed)},
      {text(QT_TRANSLATE_NOOP("Help", "Limits of axial force")), limit_topics(LimitScale::thrust)},
      {text(QT_TRANSLATE_NOOP("Help", "Other limits")), limit_topics(LimitScale::other)}};
}

QStringList all_help_topics() {
  QStringList topics;
  for (const HelpGroup& group : help_groups()) {
    topics += group.topics;
  }
  return topics;
}

QString topic_of(PartSlot slot, std::string_view type) {
  return type.empty() ? QStringLiteral("part/") + text_of(slot_name(slot))
                      : QStringLiteral("type/") + text_of(type);
}

QString topic_of(LimitId limit) {
  return QStringLiteral("limit/") + text_of(descriptor(limit).name);
}

QString help_page(const QString& topic, const QString& language) {
  const QString code = language.isEmpty() ? current_language() : language;
  QFile file(QStringLiteral(":/resources/help/%1/%2.md").arg(code, topic));
  return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

QString help_title(const QString& markdown, const QString& topic) {
  const QString first = markdown.section(QLatin1Char('\n'), 0, 0);
  return first.startsWith(QLatin1String("# ")) ? first.mid(2).trimmed() : topic;
}

QString help_words(const QString& markdown) {
  static const QRegularExpression picture(QStringLiteral(R"(!\[([^\]]*)\]\([^)]*\))"));
  static const QRegularExpression link(QStringLiteral(R"(\[([^\]]*)\]\([^)]*\))"));
  static const QRegularExpression marks(QStringLiteral(R"([*_#|`]|^-{3,}$)"),
                                        QRegularExpression::MultilineOption);
  QString words = markdown;
  words.replace(picture, QStringLiteral("\\1"));
  words.replace(link, QStringLiteral("\\1"));
  words.remove(marks);
  return words.simplified();
}

HelpLink read_help_link(const QString& link) {
  const QString scheme = link.section(QLatin1Char(':'), 0, 0);
  const QString rest = link.section(QLatin1Char(':'), 1);
  HelpLink made;
  if (scheme == QLatin1String("help")) {
    made.to = HelpLink::To::page;
    made.topic = rest;
  } else if (scheme == QLatin1String("part")) {
    if (const auto slot = slot_named(rest.section(QLatin1Char('/'), 0, 0))) {
      made.to = HelpLink::To::part;
      made.slot = *slot;
      made.member = rest.section(QLatin1Char('/'), 1);
    }
  }
  return made;
}

} // namespace feedwright
