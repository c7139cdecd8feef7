// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/window.h"
#include "text/words.h"

#include <QRegularExpression>
#include <QXmlStreamReader>

#include <set>

using namespace feedwright;
using feedwright::testing::InLanguage;
using feedwright::testing::ordinary_router;

namespace {

/// The router with every type of part in turn.
std::vector<Machine> machines_of_every_type() {
  std::vector<Machine> machines;
  for (const PartSlot slot : {PartSlot::motor, PartSlot::transmission, PartSlot::drive}) {
    for (const std::string_view type : part_types(slot)) {
      machines.push_back(ordinary_router());
      set_part_type(machines.back(), 0, slot, type);
    }
  }
  return machines;
}

void check_words_of_columns(PartSlot slot, const FieldInfo& table) {
  for (const FieldInfo& column : table.table->columns()) {
    INFO(column.member);
    CHECK_FALSE(words::column_name(slot, table.member, column.member).isEmpty());
    for (const std::string_view choice : column.choices) {
      CHECK_FALSE(words::choice_name(column.member, choice).isEmpty());
    }
  }
}

void check_words_of_fields() {
  for (const Machine& machine : machines_of_every_type()) {
    std::vector<PartSlot> all_slots(std::begin(machine_slots), std::end(machine_slots));
    all_slots.insert(all_slots.end(), std::begin(axis_slots), std::end(axis_slots));
    for (const PartSlot slot : all_slots) {
      CHECK_FALSE(words::part_name(slot).isEmpty());
      for (const FieldView& field : fields_of(machine, 0, slot)) {
        INFO(slot_name(slot) << "." << field.info.member);
        CHECK_FALSE(words::field_name(slot, field.info.member).isEmpty());
        CHECK(words::field_help(slot, field.info.member).endsWith(QLatin1Char('.')));
        for (const std::string_view choice : field.info.choices) {
          CHECK_FALSE(words::choice_name(field.info.member, choice).isEmpty());
        }
        if (field.info.type == FieldType::table) {
          check_words_of_columns(slot, field.info);
        }
      }
      for (const std::string_view type : part_types(slot)) {
        CHECK_FALSE(words::part_type_title(type).isEmpty());
      }
    }
  }
}

} // namespace

TEST_CASE("every part, field, choice and type has words, in every language") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    INFO(language.code);
    check_words_of_fields();
  }
}

TEST_CASE("every result and limit has a name of its own and every result a meaning") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    INFO(language.code);
    std::set<QString> limits;
    for (const ResultDescriptor& result : result_descriptors()) {
      INFO(result.name);
      CHECK_FALSE(words::result_name(result.id).isEmpty());
      CHECK(words::result_meaning(result.id).endsWith(QLatin1Char('.')));
    }
    for (const LimitDescriptor& limit : limit_descriptors()) {
      limits.insert(words::limit_name(limit.id));
    }
    CHECK(limits.size() == limit_count);
  }
}

TEST_CASE("every finding says all it has to say and leaves no place unfilled") {
  for (int code = 0; code <= static_cast<int>(FindingCode::overall_below_span); ++code) {
    const AnyQuantity torque{Kind::torque, 1.5};
    const QString bare = words::finding_text(
        {static_cast<FindingCode>(code), PartSlot::drive, std::nullopt, std::nullopt});
    Finding finding{static_cast<FindingCode>(code), PartSlot::drive, std::nullopt, std::nullopt};
    if (bare.contains(QStringLiteral("%1"))) {
      finding.actual = torque;
    }
    if (bare.contains(QStringLiteral("%2"))) {
      finding.allowed = torque;
    }
    const QString text = words::finding_text(finding);
    INFO(finding_name(finding.code));
    CHECK(text.endsWith(QLatin1Char('.')));
    CHECK_FALSE(text.contains(QLatin1Char('%')));
  }
}

TEST_CASE("what can hurt somebody says so and sends to local rules") {
  const AnyQuantity torque{Kind::torque, 1.0};
  const QString rules = QStringLiteral("local rules");
  CHECK(words::finding_text({FindingCode::axis_can_fall, PartSlot::carriage, torque, torque})
            .contains(rules));
  CHECK(words::finding_text({FindingCode::self_locking_not_promised, PartSlot::drive, {}, {}})
            .contains(rules));
}

TEST_CASE("verdicts differ in word and in sign") {
  std::set<QString> signs;
  std::set<QString> spoken;
  for (const Verdict verdict : {Verdict::clear, Verdict::close, Verdict::over, Verdict::open}) {
    signs.insert(words::verdict_sign(verdict));
    spoken.insert(words::verdict_word(verdict));
  }
  CHECK(signs.size() == 4);
  CHECK(spoken.size() == 4);
}

TEST_CASE("a typed value is shown in the language's decimal mark, its value unmoved") {
  Machine machine = ordinary_router();
  const AnyQuantity lead{Kind::lead, 0.0125 / (2.0 * pi)};
  REQUIRE(set_field(machine, 0, PartSlot::drive, "lead", lead, {"12.5 mm", Origin::entered}));
  const auto text = [&] {
    return words::field_text(*field_of(machine, 0, PartSlot::drive, "lead"));
  };
  CHECK(text() == QStringLiteral("12.5 mm"));
  const InLanguage german("de");
  CHECK(text() == QStringLiteral("12,5 mm"));
}

TEST_CASE("the German catalogue is complete and keeps every place for a value") {
  QFile file(QStringLiteral(FEEDWRIGHT_SOURCE_DIR "/translations/feedwright_de.ts"));
  REQUIRE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  static const QRegularExpression place(QStringLiteral("%(n|[1-9])"));
  const auto places = [](const QString& text) {
    std::set<QString> found;
    for (auto match = place.globalMatch(text); match.hasNext();) {
      found.insert(match.next().captured());
    }
    return found;
  };
  QString source;
  int messages = 0;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) {
      continue;
    }
    if (xml.name() == QLatin1String("source")) {
      source = xml.readElementText();
      ++messages;
    } else if (xml.name() == QLatin1String("translation")) {
      INFO(source.toStdString());
      CHECK(xml.attributes().value(QLatin1String("type")).isEmpty());
      const QString text = xml.readElementText(QXmlStreamReader::IncludeChildElements);
      CHECK_FALSE(text.trimmed().isEmpty());
      CHECK(places(text) == places(source));
    }
  }
  CHECK(messages > 700);
}

TEST_CASE("a quantity keeps its order in a text that runs from right to left") {
  const AnyQuantity mass{Kind::mass, 9.0};
  CHECK(words::quantity(mass, "kg") == QStringLiteral("9 kg"));
  const InLanguage turned("x-pseudo");
  const QString text = words::quantity(mass, "kg");
  CHECK(text.startsWith(QChar(0x2066)));
  CHECK(text.endsWith(QChar(0x2069)));
  CHECK(text.contains(QStringLiteral("9 kg")));
}
