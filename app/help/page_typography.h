// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How a page of help is set beyond what Markdown says: quantities whole, symbols with subscripts.

#include <QString>

class QTextDocument;

namespace feedwright {

/// Holds number and unit together and sets "C_a" with its subscript, but in what is code.
void set_page(QTextDocument& document);

/// Words as they then stand in the document, to be found there.
QString as_set(const QString& words);

/// A piece of the document as it was written, for copying.
QString as_written(QString text);

} // namespace feedwright
