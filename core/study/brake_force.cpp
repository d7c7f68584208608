#include "core/study/brake_force.h"

#include "core/parts/document_fields.h"
#include "core/parts/part_kind.h"

#include <algorithm>
#include <numbers>

namespace pumpwright {

double pedalForce_N(const Part& booster, double deceleration_mps2) {
    const PartKind& kind = kindOf(booster);
    const auto value = [&](std::string_view key) { return kind.value(booster, key); };
    const double asked_mps2 = std::clamp(deceleration_mps2, 0.0, value("roadGrip_mps2"));
    const double line_Pa = asked_mps2 * value("vehicleMass_kg") / value("brakeGain_m2");
    const double bore_m = value("masterCylinderBore_m");
    const double output_N = line_Pa * std::numbers::pi / 4 * bore_m * bore_m / value("efficiency");
    // Output is rod force up to the cut-in; above it, (boost − 1)·(rod − cut-in) of assist more.
    const double cutIn_N = value("cutIn_N");
    const double boost = value("boostRatio");
    const double rod_N = output_N <= cutIn_N ? output_N : (output_N + (boost - 1) * cutIn_N) / boost;
    return std::min(rod_N / value("pedalRatio"), field::kPressForce.high);
}

const Part* firstBooster(const Circuit& circuit) {
    for (const auto& [id, part] : circuit.parts) {
        if (part.kind == "booster") {
            return &part;
        }
    }
    return nullptr;
}

} // namespace pumpwright
