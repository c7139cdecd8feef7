// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Which numbers stand at a plot's scale, and how they are written.

#include <QSharedPointer>

#include <span>

class QCPAxisTicker;

namespace feedwright {

/// Round numbers in the language's decimal mark, whatever the locale; no closer
/// than its tick count asks, as long as two stand on the scale.
QSharedPointer<QCPAxisTicker> round_numbers();

/// Those numbers, and no others.
QSharedPointer<QCPAxisTicker> only_numbers(std::span<const double> numbers);

} // namespace feedwright
