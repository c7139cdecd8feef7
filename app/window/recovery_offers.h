// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/unsaved_folder.h"

#include <QCoreApplication>

#include <deque>
#include <optional>

namespace feedwright {

class MainWindow;
class Windows;

/// Offers what an earlier run put aside and did not live to save, one copy at a time, on a window's
/// banner. Its content decides, not its date: a copy that says what the file says is not offered.
class RecoveryOffers {
  Q_DECLARE_TR_FUNCTIONS(RecoveryOffers)
public:
  /// Of the messages on the banner.
  static const QString topic;

  explicit RecoveryOffers(Windows& windows) : windows_(windows) {}

  /// Looks for copies left behind, and offers the first that is worth it in the window.
  void look(MainWindow& window);
  /// Offers in the window what is still to be offered, the copies of its own file first.
  void offer(MainWindow& window);
  /// Another machine has been opened in the window: only copies of that file are looked for.
  void look_for_file(MainWindow& window, const QString& path);

private:
  struct Offer {
    LeftCopy left;
    QString sentence;
  };
  void gather(const std::optional<QString>& file = std::nullopt);
  void show(MainWindow& window, const Offer& offer);
  LeftCopy taken(const QString& place);
  void take_up(MainWindow& window, const QString& place);
  void look_at(const QString& place);
  void throw_away(MainWindow& window, const QString& place);
  const Offer* find(const QString& place) const;
  const Offer* of_file(const QString& file) const;

  Windows& windows_;
  std::deque<Offer> offers_;
};

} // namespace feedwright
