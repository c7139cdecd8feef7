// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/autosave.h"
#include "document/file_claim.h"
#include "document/machine_document.h"

#include <memory>

namespace feedwright {

/// What keeps a document's work from being lost.
struct Safekeeping {
  Safekeeping(MachineDocument& document, Autosave::Pace pace) : autosave(document, pace) {}

  Autosave autosave;
  FileClaim claim;
};

/// A document with its safekeeping, which a document made only to be looked at does without. They
/// stay together when a window is made anew.
struct KeptDocument {
  std::unique_ptr<MachineDocument> document;
  std::unique_ptr<Safekeeping> safekeeping = nullptr;

  static KeptDocument of(Machine machine, Autosave::Pace pace) {
    KeptDocument kept{std::make_unique<MachineDocument>(std::move(machine))};
    kept.safekeeping = std::make_unique<Safekeeping>(*kept.document, pace);
    return kept;
  }
};

} // namespace feedwright
