#pragma once

#include "core/checks/finding.h"
#include "core/simulate/drive.h"

#include <memory>
#include <vector>

namespace pumpwright {

/// A circuit driven and checked.
struct CheckedCircuit {
    Circuit circuit;
    std::shared_ptr<const DriveResult> drive;
    std::vector<Finding> findings;
};

CheckedCircuit checkedCircuit(Circuit circuit);

/// "The drive stopped: …" with what is wrong, or nothing where it came to its end.
std::string driveComplaint(const DriveResult& drive);

} // namespace pumpwright
