// SPDX-License-Identifier: GPL-3.0-or-later

// What the program asks its catalogue for while it runs is in the catalogue: a text that is filed
// there under another context than it is asked for stays English without a word.

#include "help/about_window.h"
#include "help/diagrams.h"
#include "help/help_topics.h"
#include "help/pictures.h"
#include "studies/studies_view.h"
#include "support/machine_files.h"
#include "support/window.h"

#include <QApplication>
#include <QPixmap>
#include <QTranslator>

#include <algorithm>
#include <set>
#include <tuple>

using namespace feedwright;
using feedwright::testing::InLanguage;
using feedwright::testing::sample;
using feedwright::testing::Shown;

namespace {

using Asked = std::tuple<std::string, std::string, std::string>;

/// Has no word itself, and notes what it is asked.
class Listener : public QTranslator {
public:
  QString translate(const char* context, const char* source, const char* disambiguation,
                    int) const override {
    asked.emplace(context, source, disambiguation != nullptr ? disambiguation : "");
    return {};
  }
  bool isEmpty() const override { return false; }

  mutable std::set<Asked> asked;
};

/// Qt's own classes, whose words are in Qt's catalogue.
bool is_of_the_library(const std::string& context) {
  return context.size() > 1 && context[0] == 'Q' && context[1] >= 'A' && context[1] <= 'Z';
}

void look_at_everything(const char* name) {
  const Machine machine = sample(name);
  Shown shown(machine);
  for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
    shown.window->show_axis(axis);
    for (int study = 0; study < StudiesView::study_count(); ++study) {
      shown.window->show_study(study);
      QCoreApplication::processEvents();
      shown.window->grab();
    }
  }
}

} // namespace

TEST_CASE("every text that is asked for while the program runs is in the German catalogue") {
  const InLanguage german("de");
  QTranslator catalogue;
  REQUIRE(catalogue.load(QStringLiteral("feedwright_de"), QStringLiteral(":/translations")));
  Listener listener;
  REQUIRE(QCoreApplication::installTranslator(&listener));
  for (const char* name : {"plank-router", "clock-mill", "sign-engraver"}) {
    look_at_everything(name);
  }
  for (const QString& diagram : diagram_names()) {
    CHECK(help_picture(QStringLiteral("picture:") + diagram,
                       {Look::light_look(), QApplication::font(), 520.0, 1.0}));
  }
  const AboutWindow about;
  QCoreApplication::removeTranslator(&listener);
  CHECK(listener.asked.size() > 500);
  for (const auto& [context, source, disambiguation] : listener.asked) {
    const bool has_letters = std::ranges::any_of(
        source, [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); });
    if (is_of_the_library(context) || !has_letters) {
      continue;
    }
    INFO(context << ": " << source << " (" << disambiguation << ")");
    CHECK_FALSE(catalogue
                    .translate(context.c_str(), source.c_str(),
                               disambiguation.empty() ? nullptr : disambiguation.c_str(), 1)
                    .isNull());
  }
}
