#pragma once

#include "core/circuit/circuit.h"

#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>

namespace pumpwright {

/// Builds circuits for tests in a few lines. Parts are named by their reference, which is their id as well;
/// an end is written "K1.86". Wires are "w1", "w2" … with references "W1", "W2" …, hoses likewise.
///
///     Circuit circuit = CircuitBuilder()
///         .part("supply", "G1")
///         .part("fuse", "F1", {{"rating_A", 10}})
///         .wire("G1.30", "F1.1", 2.5e-6, 0.1)
///         .build();
class CircuitBuilder {
public:
    using Values = std::initializer_list<std::pair<const std::string, double>>;
    using Choices = std::initializer_list<std::pair<const std::string, std::string>>;

    CircuitBuilder& part(std::string_view kind, std::string_view reference, Values values = {},
                         Choices choices = {});
    CircuitBuilder& wire(std::string_view from, std::string_view to, double area_m2 = 1.5e-6,
                         double length_m = 1.0);
    CircuitBuilder& hose(std::string_view from, std::string_view to, double innerDiameter_m = 0.009,
                         double length_m = 0.5);
    CircuitBuilder& plan(DrivePlan plan);
    CircuitBuilder& limits(ProjectLimits limits);

    Circuit build() const { return m_circuit; }

private:
    Circuit m_circuit;
};

/// "K1.86" as an end.
End endOf(std::string_view text);

} // namespace pumpwright
