// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QDate>

namespace feedwright::sheet {

/// The PDF with its dates of creation set to noon UTC of the date, so that the same sheet has the
/// same bytes. Dates have a fixed length (ISO 32000-1, 7.9.4), so nothing else moves.
QByteArray with_creation_date(QByteArray pdf, QDate date);

} // namespace feedwright::sheet
