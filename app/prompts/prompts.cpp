// SPDX-License-Identifier: GPL-3.0-or-later
#include "prompts/prompts.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Prompts)

public:
  static QString unsaved(const QString& name) {
    return tr("%1 has changes that are not saved.").arg(name);
  }
  static QString discard() { return tr("&Don't save"); }
  static QString overwrite(const QString& name, OverwriteReason reason) {
    return reason == OverwriteReason::changed_outside
               ? tr("%1 was changed by another program since it was read here. Saving now would "
                    "lose that change.")
                     .arg(name)
               : tr("%1 was written by a newer program. What this one does not know of it is kept "
                    "as it stands, but may no longer fit your changes.")
                     .arg(name);
  }
  static QString overwrite_button() { return tr("Overwrite"); }
  static QString save_as_button() { return tr("Save under another name…"); }
  static QString machines() { return tr("Machines (*.feedwright)"); }
  static QString any_file() { return tr("All files (*)"); }
  static QString pdfs() { return tr("PDF (*.pdf)"); }
  static QString open_title() { return tr("Open a machine"); }
  static QString save_title() { return tr("Save the machine as"); }
  static QString pdf_title() { return tr("Sheet as PDF"); }
  static QString tables() { return tr("Tables as text (*.csv *.tsv *.txt)"); }
  static QString pictures() { return tr("Pictures (*.png)"); }
  static QString numbers() { return tr("Numbers (*.csv)"); }
  static QString study_title() { return tr("Save the study as"); }
  static QString table_title() { return tr("Import a table"); }
};

QString with_ending(const QString& path, const QString& ending) {
  return path.isEmpty() || path.endsWith(ending, Qt::CaseInsensitive) ? path : path + ending;
}

/// A message box that never takes text for markup.
void set_up(QMessageBox& box, const QString& name, const QString& text) {
  box.setObjectName(name);
  box.setTextFormat(Qt::PlainText);
  box.setWindowTitle(QCoreApplication::applicationName());
  box.setText(text);
}

QString asked_save_path(QWidget* parent, const QString& title, const QString& suggested,
                        const QString& filter, const QString& ending) {
  QFileDialog dialog(parent, title, suggested, filter);
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setDefaultSuffix(ending.mid(1));
  dialog.selectFile(suggested);
  return dialog.exec() == QDialog::Accepted
             ? with_ending(dialog.selectedFiles().constFirst(), ending)
             : QString();
}

} // namespace

UnsavedAnswer DialogPrompts::unsaved_changes(QWidget* parent, const QString& name) {
  QMessageBox box(parent);
  set_up(box, QStringLiteral("unsaved_changes"), Words::unsaved(name));
  box.setIcon(QMessageBox::Question);
  QPushButton* save = box.addButton(QMessageBox::Save);
  QPushButton* discard = box.addButton(Words::discard(), QMessageBox::DestructiveRole);
  box.addButton(QMessageBox::Cancel);
  box.setDefaultButton(save);
  box.exec();
  if (box.clickedButton() == save) {
    return UnsavedAnswer::save;
  }
  return box.clickedButton() == discard ? UnsavedAnswer::discard : UnsavedAnswer::cancel;
}

OverwriteAnswer DialogPrompts::overwrite(QWidget* parent, const QString& name,
                                         OverwriteReason reason) {
  QMessageBox box(parent);
  set_up(box, QStringLiteral("overwrite"), Words::overwrite(name, reason));
  box.setIcon(QMessageBox::Warning);
  QPushButton* other = box.addButton(Words::save_as_button(), QMessageBox::AcceptRole);
  QPushButton* overwriting = box.addButton(Words::overwrite_button(), QMessageBox::DestructiveRole);
  box.addButton(QMessageBox::Cancel);
  box.setDefaultButton(other);
  box.exec();
  if (box.clickedButton() == other) {
    return OverwriteAnswer::save_as;
  }
  return box.clickedButton() == overwriting ? OverwriteAnswer::overwrite : OverwriteAnswer::cancel;
}

QString DialogPrompts::machine_to_open(QWidget* parent, const QString& folder) {
  return QFileDialog::getOpenFileName(parent, Words::open_title(), folder,
                                      Words::machines() + QStringLiteral(";;") + Words::any_file());
}

QString DialogPrompts::machine_to_save(QWidget* parent, const QString& suggested) {
  return asked_save_path(parent, Words::save_title(), suggested, Words::machines(),
                         QStringLiteral(".feedwright"));
}

QString DialogPrompts::pdf_to_save(QWidget* parent, const QString& suggested) {
  return asked_save_path(parent, Words::pdf_title(), suggested, Words::pdfs(),
                         QStringLiteral(".pdf"));
}

QString DialogPrompts::table_to_import(QWidget* parent) {
  return QFileDialog::getOpenFileName(parent, Words::table_title(), {},
                                      Words::tables() + QStringLiteral(";;") + Words::any_file());
}

QString DialogPrompts::study_to_save(QWidget* parent, const QString& suggested) {
  const QString picture = QStringLiteral(".png");
  return suggested.endsWith(picture)
             ? asked_save_path(parent, Words::study_title(), suggested, Words::pictures(), picture)
             : asked_save_path(parent, Words::study_title(), suggested, Words::numbers(),
                               QStringLiteral(".csv"));
}

void DialogPrompts::tell(QWidget* parent, const QString& sentence, const QStringList& details) {
  constexpr int shown_at_once = 8;
  QMessageBox box(parent);
  const QStringList first = details.mid(0, shown_at_once);
  QString text = sentence;
  for (const QString& detail : first) {
    text += QStringLiteral("\n\n") + detail;
  }
  set_up(box, QStringLiteral("told"), text);
  box.setIcon(QMessageBox::Warning);
  if (details.size() > shown_at_once) {
    box.setDetailedText(details.join(QLatin1Char('\n')));
  }
  box.exec();
}

} // namespace feedwright
