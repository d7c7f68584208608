#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/failure.h"
#include "core/simulate/recording.h"

#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// One thing that fails in a circuit.
struct Breakdown {
    Subject subject = Subject::Part; ///< Part, Wire or Hose
    std::string id;                  ///< of the part, wire or hose
    std::string failure;             ///< id of the failure: "contact-welded"; for wires and hoses see below
    std::string title;               ///< with its name: "K1: contact stays closed (welded)"
};

/// Id of the failure of a wire that touches the vehicle's body.
inline constexpr std::string_view kWireOnBody = "wire-on-body";

/// Everything that may plausibly fail: what each part's kind states; "wire-broken" and, where it is not
/// ground anyway, "wire-on-body"; "hose-off" and "hose-leaks" (a hole of 1 mm). In order of parts, wires,
/// hoses. What would change nothing (a terminal without wires) is left out.
std::vector<Breakdown> breakdownsOf(const Circuit& circuit);

/// The edit that makes it fail; without changes where the circuit knows nothing of it.
Edit breakdownEdit(const Circuit& circuit, const Breakdown& breakdown);

} // namespace pumpwright
