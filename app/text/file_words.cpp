// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/file_words.h"

#include <QCoreApplication>

namespace feedwright::words {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Words)

public:
  static QString of(FileFault fault) {
    switch (fault) {
    case FileFault::not_found: return tr("%1: there is no such file or folder.");
    case FileFault::no_permission: return tr("%1: the system does not permit it.");
    case FileFault::read_only_file: return tr("%1: the file may be read only.");
    case FileFault::read_only_medium: return tr("%1: the medium may be read only.");
    case FileFault::no_space: return tr("%1: there is no room left; nothing was changed.");
    case FileFault::too_large: return tr("%1: the file is larger than what is allowed.");
    case FileFault::is_directory: return tr("%1: that is a folder, not a file.");
    case FileFault::not_regular_file: return tr("%1: that is no ordinary file.");
    case FileFault::link_loop: return tr("%1: its links lead round in a circle.");
    case FileFault::bad_name: return tr("\"%1\" cannot be the name of a file.");
    case FileFault::name_too_long: return tr("%1: the name is too long.");
    case FileFault::changed_while_reading:
      return tr("%1: the file changed while it was being read; try again.");
    case FileFault::read_back_differs:
      return tr("%1: what was written does not read back the same; the medium may be failing.");
    case FileFault::not_durable:
      return tr("%1: the file is written, but may be lost if the power fails now.");
    case FileFault::no_resources: return tr("%1: the system has run out of memory or handles.");
    case FileFault::input_output: break;
    }
    return tr("%1: the system could not read or write it.");
  }

  static QString with_code(const QString& sentence, int code) {
    return tr("%1 (System error %2.)").arg(sentence).arg(code);
  }
};

} // namespace

QString file_error_text(const FileError& error) {
  const QString sentence = Words::of(error.fault).arg(QString::fromStdString(error.path));
  return error.fault == FileFault::input_output ? Words::with_code(sentence, error.system_code)
                                                : sentence;
}

} // namespace feedwright::words
