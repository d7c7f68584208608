#pragma once

#include "core/circuit/circuit.h"
#include "core/units/quantity_kind.h"

#include <optional>
#include <string>
#include <vector>

namespace pumpwright {

/// A value of an object under the name that people know it by.
struct ObjectField {
    std::string label;
    std::string text;            ///< as it is shown
    std::optional<double> value; ///< of numbers, in SI: two may differ and be shown alike
    QuantityKind kind = QuantityKind::Number;
};

using ObjectFields = std::vector<ObjectField>;

// Everything that a circuit says, but where things stand on the drawing.

ObjectFields fieldsOf(const Circuit& circuit, const Part& part);
ObjectFields fieldsOf(const Circuit& circuit, const Wire& wire);
ObjectFields fieldsOf(const Circuit& circuit, const Hose& hose);
ObjectFields fieldsOf(const DrivePlan& plan, const Circuit& circuit);
ObjectFields fieldsOf(const ProjectLimits& limits);
ObjectFields fieldsOf(const TitleBlock& title);

} // namespace pumpwright
