// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/diagrams.h"
#include "help/help_topics.h"
#include "help/pictures.h"
#include "support/window.h"
#include "text/text_of.h"
#include "text/words.h"
#include "units/read_quantity.h"
#include "units/unit_table.h"

#include <QApplication>
#include <QPainter>
#include <QRegularExpression>

#include <set>

using namespace feedwright;
using feedwright::testing::InLanguage;

namespace {

/// A page with where it stands, for a failing check.
struct Page {
  QString language, topic, text;
  std::string where() const { return (language + QLatin1Char('/') + topic).toStdString(); }
};

std::vector<Page> all_pages() {
  std::vector<Page> pages;
  for (const Language& language : languages()) {
    const QString code = QString::fromLatin1(language.code);
    for (const QString& topic : all_help_topics()) {
      if (topic != keys_topic) {
        pages.push_back({code, topic, help_page(topic, code)});
      }
    }
  }
  return pages;
}

QStringList matches(const QString& text, const char* pattern) {
  QStringList found;
  auto it = QRegularExpression(QString::fromLatin1(pattern)).globalMatch(text);
  while (it.hasNext()) {
    found << it.next().captured(1);
  }
  return found;
}

QStringList links(const QString& text) {
  return matches(text, R"((?<!\!)\[[^\]]*\]\(([^)]*)\))")
      .filter(QRegularExpression(QStringLiteral("^(?!.*=)")));
}

QStringList pictures(const QString& text) {
  return matches(text, R"(!\[[^\]]*\]\(([^)]*)\))");
}

QString with_capital(const QString& text) {
  return text.left(1).toUpper() + text.mid(1);
}

/// Whether any part that may stand in the place has the field.
bool has_field(PartSlot slot, const QString& member) {
  Machine machine = testing::ordinary_router();
  const auto types = part_types(slot);
  if (types.empty()) {
    return field_of(machine, 0, slot, member.toStdString()).has_value();
  }
  return std::ranges::any_of(types, [&](std::string_view type) {
    return set_part_type(machine, 0, slot, type) &&
           field_of(machine, 0, slot, member.toStdString()).has_value();
  });
}

PictureFrame frame(const Look& look, double width = 520.0, double ratio = 1.0) {
  return {look, QApplication::font(), width, ratio};
}

/// How many colours a picture has: one that is not drawn has one.
std::size_t colours_in(const QImage& image) {
  std::set<QRgb> colours;
  for (int y = 0; y < image.height(); y += 2) {
    for (int x = 0; x < image.width(); x += 2) {
      colours.insert(image.pixel(x, y));
    }
  }
  return colours.size();
}

} // namespace

TEST_CASE("help has a page for every part, every type of part and every limit, in every language") {
  const QStringList topics = all_help_topics();
  for (std::size_t i = 0; i < slot_count; ++i) {
    const auto slot = static_cast<PartSlot>(i);
    CHECK(topics.contains(topic_of(slot, {})));
    for (const std::string_view type : part_types(slot)) {
      CHECK(topics.contains(topic_of(slot, type)));
    }
  }
  for (const LimitDescriptor& limit : limit_descriptors()) {
    CHECK(topics.contains(topic_of(limit.id)));
  }
  for (const Page& page : all_pages()) {
    INFO(page.where());
    const qsizetype words = help_words(page.text).split(QLatin1Char(' ')).size();
    CHECK(words >= 120);
    CHECK(words <= 400);
    CHECK(help_title(page.text, {}) != QString());
    CHECK(page.text.count(
              QRegularExpression(QStringLiteral("^# "), QRegularExpression::MultilineOption)) == 1);
  }
}

TEST_CASE("a page is headed by the name the window uses") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const LimitDescriptor& limit : limit_descriptors()) {
      const QString topic = topic_of(limit.id);
      CHECK(help_title(help_page(topic), topic) == with_capital(words::limit_name(limit.id)));
    }
    for (std::size_t i = 0; i < slot_count; ++i) {
      const auto slot = static_cast<PartSlot>(i);
      const QString topic = topic_of(slot, {});
      CHECK(help_title(help_page(topic), topic) == words::part_name(slot));
      for (const std::string_view type : part_types(slot)) {
        const QString page = topic_of(slot, type);
        CHECK(help_title(help_page(page), page) == words::part_type_title(type));
      }
    }
  }
}

TEST_CASE("every link of help leads to a page or a field there is") {
  for (const Page& page : all_pages()) {
    for (const QString& link : links(page.text)) {
      INFO(page.where() << " " << link.toStdString());
      const HelpLink read = read_help_link(link);
      CHECK(read.to != HelpLink::To::elsewhere);
      if (read.to == HelpLink::To::page) {
        CHECK(all_help_topics().contains(read.topic));
      } else if (read.to == HelpLink::To::part) {
        CHECK(has_field(read.slot, read.member));
      }
    }
    CHECK_FALSE(page.text.contains(QLatin1String("http")));
  }
}

TEST_CASE("every page of help says the same links and pictures in every language") {
  for (const QString& topic : all_help_topics()) {
    if (topic == keys_topic) {
      continue;
    }
    const QString english = help_page(topic, QStringLiteral("en"));
    for (const Language& language : languages()) {
      const QString other = help_page(topic, QString::fromLatin1(language.code));
      INFO(language.code << " " << topic.toStdString());
      const auto set_of = [](const QStringList& list) {
        return std::set<QString>(list.begin(), list.end());
      };
      CHECK(set_of(links(other)) == set_of(links(english)));
      CHECK(pictures(other) == pictures(english));
    }
  }
}

TEST_CASE("every page is reached from some other page") {
  std::set<QString> reached;
  for (const Page& page : all_pages()) {
    for (const QString& link : links(page.text)) {
      const HelpLink read = read_help_link(link);
      if (read.to == HelpLink::To::page && read.topic != page.topic) {
        reached.insert(read.topic);
      }
    }
  }
  for (const QString& topic : all_help_topics()) {
    INFO(topic.toStdString());
    CHECK((topic == first_topic || reached.contains(topic)));
  }
}

TEST_CASE("no column of a table of help has an empty head") {
  for (const Page& page : all_pages()) {
    INFO(page.where());
    const QStringList lines = page.text.split(QLatin1Char('\n'));
    for (qsizetype i = 1; i < lines.size(); ++i) {
      if (lines[i].startsWith(QLatin1String("|---"))) {
        static const QRegularExpression empty(QStringLiteral("\\|\\s*\\|"));
        CHECK_FALSE(lines[i - 1].contains(empty));
      }
    }
  }
}

TEST_CASE("no two pages of limits show the same picture of errors") {
  const QString reversal = help_page(QStringLiteral("limit/reversal_error"), QStringLiteral("en"));
  const QString cutting = help_page(QStringLiteral("limit/cutting_error"), QStringLiteral("en"));
  CHECK(pictures(reversal) != pictures(cutting));
}

TEST_CASE("every picture of help is drawn, light and dark, crisp at twice the scale") {
  std::set<QString> wanted;
  for (const Page& page : all_pages()) {
    for (const QString& name : pictures(page.text)) {
      wanted.insert(name);
    }
  }
  for (const QString& name : diagram_names()) {
    CHECK(wanted.contains(QStringLiteral("picture:") + name));
  }
  for (const QString& name : wanted) {
    INFO(name.toStdString());
    const auto light = help_picture(name, frame(Look::light_look()));
    const auto dark = help_picture(name, frame(Look::dark_look()));
    const auto twice = help_picture(name, frame(Look::light_look(), 520.0, 2.0));
    REQUIRE(light);
    REQUIRE(dark);
    REQUIRE(twice);
    CHECK(colours_in(*light) > 8);
    CHECK(light->pixel(1, 1) != dark->pixel(1, 1));
    CHECK(light->width() == 520);
    CHECK(twice->width() == 1040);
    CHECK(twice->devicePixelRatio() == Approx(2.0));
    CHECK(light->height() > 60);
    CHECK(light->height() < 700);
  }
  CHECK_FALSE(help_picture(QStringLiteral("picture:no-such"), frame(Look::light_look())));
  CHECK_FALSE(help_picture(QStringLiteral("train:plank-router/9"), frame(Look::light_look())));
}

TEST_CASE("a diagram of help in a narrow page has smaller letters rather than cut words") {
  QFont large = QApplication::font();
  large.setPointSizeF(18.0);
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const QString& name : diagram_names()) {
      INFO(language.code << " " << name.toStdString());
      PictureFrame narrow = frame(Look::light_look(), 500.0);
      narrow.font = large;
      const Diagram* diagram = diagram_named(name);
      REQUIRE(diagram != nullptr);
      const QFont used = diagram_font(*diagram, narrow);
      QImage image(500, 600, QImage::Format_ARGB32_Premultiplied);
      QPainter painter(&image);
      DiagramBoard board(painter, narrow.look, used,
                         QRectF(6.0, 6.0, 488.0, diagram->lines * QFontMetricsF(used).height()));
      diagram->paint(board);
      CHECK_FALSE(board.cut_text());
      CHECK(used.pointSizeF() >= 9.5);
    }
  }
}

TEST_CASE("what the page on numbers says can be typed can be read") {
  const struct {
    const char* typed;
    Kind kind;
    const char* usual;
  } said[] = {{"12 mm", Kind::length, "mm"},
              {"1.2 cm", Kind::length, "mm"},
              {"1/2 in", Kind::length, "mm"},
              {"12,5", Kind::length, "mm"},
              {"3*5 mm", Kind::length, "mm"},
              {"(20+5)/2", Kind::length, "mm"},
              {"190 oz in", Kind::torque, "N·m"},
              {"1.9 kgf cm", Kind::torque, "N·m"},
              {"1.3 N m", Kind::torque, "N·m"},
              {"3000 rpm", Kind::angular_velocity, "rpm"},
              {"300 rad/s", Kind::angular_velocity, "rpm"}};
  const QString page = help_page(QStringLiteral("guide/numbers"), QStringLiteral("en"));
  for (const auto& example : said) {
    INFO(example.typed);
    CHECK(page.contains(QStringLiteral("`%1`").arg(QString::fromUtf8(example.typed))));
    CHECK(read_quantity(example.typed, example.kind, find_unit(example.kind, example.usual))
              .has_value());
  }
  CHECK_FALSE(read_quantity("1,000.5", Kind::length, find_unit(Kind::length, "mm")).has_value());
}
