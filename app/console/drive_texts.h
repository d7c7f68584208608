#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/drive.h"

#include <string>
#include <string_view>

namespace pumpwright {

/// What a drive comes to, for people: vacuum, presses, motors, contacts, events.
std::string driveText(const Circuit& circuit, const DriveResult& drive);

/// The same for programs; docs/console-json.md describes it.
std::string driveJson(const std::string& file, const Circuit& circuit, const DriveResult& drive);

std::string_view statusName(DriveStatus status); ///< "finished", "cancelled", "stopped"

} // namespace pumpwright
