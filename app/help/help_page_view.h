// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTextBrowser>

namespace feedwright {

/// Shows one page of help: Markdown of our own and pictures the program draws, in the colours and
/// the font it has now. Fetches nothing; links are only told of.
class HelpPageView : public QTextBrowser {
  Q_OBJECT
public:
  explicit HelpPageView(QWidget* parent = nullptr);

  void show_page(const QString& markdown);
  /// Marks these words wherever they stand and goes to the first.
  void mark_words(const QStringList& words);
  /// In points against the window's font; 0 is the same size.
  void set_larger_by(int points);
  int larger_by() const { return larger_by_; }

  QVariant loadResource(int type, const QUrl& name) override;

protected:
  QMimeData* createMimeDataFromSelection() const override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  void render();
  void style_blocks();
  void style_tables();
  void mark_found();
  double picture_width() const;

  QString markdown_;
  QStringList words_;
  int larger_by_ = 0;
  double rendered_width_ = 0.0;
  bool rendering_ = false;
};

} // namespace feedwright
