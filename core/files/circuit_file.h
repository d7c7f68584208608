#pragma once

#include "core/circuit/circuit.h"
#include "core/units/result.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace pumpwright {

/// Reads the text of a circuit file. `fileName` is for messages only. Never throws.
[[nodiscard]] Result<Circuit> parseCircuit(std::string_view text, const std::string& fileName = {});

/// The text of a circuit file: keys in fixed order, so that a difference shows only what changed.
std::string circuitText(const Circuit& circuit);

[[nodiscard]] Result<Circuit> readCircuit(const std::filesystem::path& path);

/// Writes aside, syncs, renames: the file is the old or the new one, whole. The old one is kept with "~"
/// added.
[[nodiscard]] Result<void> writeCircuit(const Circuit& circuit, const std::filesystem::path& path);

/// Eight letters and digits that change when anything in the circuit changes.
std::string circuitCheckSum(const Circuit& circuit);

/// Text of some parts and what joins them, for the clipboard, and back.
std::string fragmentText(const Circuit& fragment);
[[nodiscard]] Result<Circuit> parseFragment(std::string_view text);

} // namespace pumpwright
