// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Faults gathered while a file is read, each with its place.

#include "machine/fault.h"

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace feedwright {

/// Where in the machine the reader is.
struct Place {
  std::string path; ///< "axes[0].screw"; empty at the top
  std::size_t axis = 0;
  std::optional<PartSlot> slot;
};

/// JSON's own name of the type: "object", "array", …
std::string_view type_name(JsonNode::Type type);

/// "/axes/0/screw" as paths are written here: "axes[0].screw".
std::string path_of_pointer(std::string_view pointer);

/// What is no JSON, as faults.
std::vector<Fault> faults_of_json(std::span<const JsonError> errors);

class FaultList {
public:
  /// A new fault at the member; `node` gives its line.
  Fault& add(FaultCode code, const Place& at, std::string_view member, const JsonNode* node);
  void wrong_type(const Place& at, std::string_view member, const JsonNode& node,
                  std::string_view wanted, const FieldInfo* info = nullptr);
  void missing(const Place& at, std::string_view member, const JsonNode& parent,
               const FieldInfo* info = nullptr);

  /// Keeps the line of what stands at the path, for faults found when all is read.
  void remember(const std::string& path, const JsonNode& node);
  /// Gives faults that know their path only their line: that of the nearest parent if the member
  /// itself is not in the file.
  void add_with_lines(std::vector<Fault> found, const JsonNode& root);

  const std::vector<Fault>& list() const { return faults_; }
  std::vector<Fault> take() { return std::move(faults_); }

private:
  void place(Fault& fault, const JsonNode& root) const;

  std::vector<Fault> faults_;
  std::map<std::string, std::pair<std::size_t, std::size_t>, std::less<>> places_;
};

} // namespace feedwright
