#include "core/checks/fuse_remedy.h"

#include "core/checks/lead_values.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/standard_size.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {

Remedy fuseWithWires(const Survey& survey, const Branch& fuse, double rating_A) {
    const std::string name = nameOf(survey.circuit(), fuse.part);
    const Text text = say("fuse of {} as {}", amount(rating_A, QuantityKind::Current), name);
    Edit edit = valueEdit(survey.circuit(), fuse.part, "rating_A", rating_A, say("Fit a {}", text));
    std::vector<Text> wires;
    for (const WireId& id : survey.wiresBehind(fuse)) {
        Wire wire = survey.circuit().wires.at(id);
        auto area_m2 = std::optional(wire.area_m2);
        while (area_m2 && capacity_A(survey, wire, *area_m2) < rating_A) {
            area_m2 = nextWireArea_m2(*area_m2);
        }
        if (area_m2 && *area_m2 > wire.area_m2) {
            wires.push_back(
                say("{} in {}", nameOf(survey.circuit(), id), amount(*area_m2, QuantityKind::WireArea)));
            wire.area_m2 = *area_m2;
            edit.changes.push_back(putWire(id, wire));
        }
    }
    return {wires.empty() ? say("Fit a {}.", text) : say("Fit a {}, and lay {}.", text, listOf(wires)),
            std::move(edit)};
}

} // namespace pumpwright
