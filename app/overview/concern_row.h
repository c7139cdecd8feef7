// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "sizing/concerns.h"

#include <QFrame>

class QBoxLayout;
class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace feedwright {

/// Where an answer to the concern is written.
TypedAt place_of(const Concern& concern);

/// One thing that deserves care: what it is, a door to it, and what the builder answers. An answer
/// that is being written waits among the pending texts until it is kept or cancelled.
class ConcernRow : public QFrame {
  Q_OBJECT
public:
  /// `key` tells rows apart and names their controls: "show_X_near_whip_drive".
  ConcernRow(MachineDocument& document, const QString& key, QWidget* parent);

  void show_concern(const Concern& concern);
  void show_idle(const IdleAnswer& idle);
  /// An answer that was being written to what is no longer found.
  void show_lost(const TypedAt& place);
  /// Follows the door to what it is about.
  void show_place();
  /// Whether an answer is open for writing here.
  bool is_writing() const;
  /// As one of a group: further in than its heading.
  void set_inset(bool inset);
  const std::optional<Concern>& concern() const { return concern_; }
  /// Puts the keyboard where the answer is written.
  void write_on();
  /// Puts the keyboard's way through this row after `before`, if that is any; gives its last stop.
  QWidget* follow(QWidget* before);

signals:
  /// An answer is about to be written here.
  void answer_begun();
  void door_chosen(const feedwright::Selection& selection,
                   const std::optional<feedwright::LimitId>& limit);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  QPushButton* add_button(const QString& name, void (ConcernRow::*act)());
  void make_editor();
  void update_texts();
  void update_colours();
  void fit_buttons();
  void begin_answer();
  void end_answer();
  void keep_answer();
  void remove();
  void check_length();
  void take_typed();
  void take_pending();
  void give_up();
  QString present_note() const;
  void show_texts(const QString& subject, const QString& text, const QString& answer);

  MachineDocument& document_;
  QString key_;
  std::optional<Concern> concern_;
  std::optional<IdleAnswer> idle_;
  /// Where what is written here waits among the pending texts, letter by letter.
  std::optional<TypedAt> place_;
  bool waits_ = false;         ///< something does
  QBoxLayout* line_ = nullptr; ///< the text, and the buttons beside or below it
  QLabel* text_ = nullptr;
  QLabel* answer_ = nullptr;
  QPushButton* show_ = nullptr;
  QPushButton* begin_ = nullptr;
  QPushButton* remove_ = nullptr;
  QFrame* editor_ = nullptr;
  QPlainTextEdit* note_ = nullptr;
  QLabel* help_ = nullptr;
  QPushButton* keep_ = nullptr;
  QPushButton* cancel_ = nullptr;
};

} // namespace feedwright
