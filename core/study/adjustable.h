#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/part_kind.h"
#include "core/simulate/recording.h"
#include "core/units/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// A number of a circuit that a study may set: a parameter of a part, or what a wire or hose measures.
struct Adjustable {
    Subject subject = Subject::Part; ///< Part, Wire or Hose
    std::string id;
    const ParameterSpec* spec = nullptr; ///< lives as long as the program
    std::string name;                    ///< as people type it: reference and key, "K2.delay_s"
    std::string label;                   ///< as people read it: "K2 Set time"
};

/// All of them: parts, wires, hoses, each in the order of their ids.
std::vector<Adjustable> adjustables(const Circuit& circuit);

/// The one of this name. The error says which names there are for that part, wire or hose.
[[nodiscard]] Result<Adjustable> findAdjustable(const Circuit& circuit, std::string_view name);

/// [SI] as the circuit has it.
double valueOf(const Circuit& circuit, const Adjustable& what);
/// The change that sets it; `value` in SI, within the range of its spec.
Change settingOf(const Circuit& circuit, const Adjustable& what, double value);
void setValue(Circuit& circuit, const Adjustable& what, double value);

/// An error, unless the value lies in the range of its spec.
[[nodiscard]] Result<double> valueInRange(const Adjustable& what, double value);

} // namespace pumpwright
