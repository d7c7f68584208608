#include "app/console/checked_circuit.h"

#include "core/checks/rule.h"
#include "core/nets/nets.h"

#include <fmt/format.h>

namespace pumpwright {

CheckedCircuit checkedCircuit(Circuit circuit) {
    CheckedCircuit checked{std::move(circuit), nullptr, {}};
    checked.drive = std::make_shared<const DriveResult>(simulateDrive(checked.circuit));
    const Nets nets = findNets(checked.circuit);
    checked.findings = checkCircuit({checked.circuit, nets, checked.drive.get()});
    return checked;
}

std::string driveComplaint(const DriveResult& drive) {
    return drive.status == DriveStatus::Finished
               ? std::string()
               : fmt::format("The drive stopped at {:.6g} s: {}", drive.recording.duration_s, drive.message);
}

} // namespace pumpwright
