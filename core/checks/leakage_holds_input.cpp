#include "core/checks/control_input.h"
#include "core/checks/edit_draft.h"
#include "core/checks/residual_current.h"
#include "core/checks/wording.h"
#include "core/parts/kinds.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

// Common practice, no published source, both of them.
constexpr double kLead_m = 0.1;      ///< of a resistor at the part's terminals
constexpr double kRemedyShare = 0.5; ///< of the voltage at which the input lets go
constexpr std::array kResistors_ohm{10'000.0, 4'700.0, 2'200.0, 1'000.0, 470.0, 220.0, 100.0, 47.0};

/// A resistor beside the input that draws the leakage off, warm at 14 V by its power.
Remedy bleedRemedy(const Survey& survey, const InputPath& input, const Residual& residual) {
    const std::string name = nameOf(survey.circuit(), input.path->part);
    const End plus{input.path->part, input.input->plus};
    const End minus{input.path->part, input.input->minus};
    const double wanted_ohm = kRemedyShare * input.input->off_V / residual.leakage_A;
    const auto size = std::find_if(kResistors_ohm.begin(), kResistors_ohm.end(),
                                   [&](double one_ohm) { return one_ohm <= wanted_ohm; });
    if (size == kResistors_ohm.end()) {
        return {say("Let a relay instead of {} switch {}.", nameOf(survey.circuit(), residual.over.front()),
                    nameOf(survey.circuit(), plus)),
                {}};
    }
    const double power_W = residual.supply_V * residual.supply_V / *size;
    EditDraft draft(survey.circuit(), say("Draw the leakage at {} off", name));
    const PartId resistor = draft.add(resistorKind(), input.path->part);
    draft.setValue(resistor, "resistance_ohm", *size);
    draft.setValue(resistor, "ratedPower_W", std::max(0.5, 2 * power_W));
    draft.addWire(plus, {resistor, "1"}, 0.75e-6, kLead_m);
    draft.addWire({resistor, "2"}, minus, 0.75e-6, kLead_m);
    return {say("Fit a resistor of {} from {} to {}.", amount(*size, QuantityKind::Resistance),
                nameOf(survey.circuit(), plus), nameOf(survey.circuit(), minus)),
            std::move(draft).edit()};
}

/// Value and limit: the voltage that is left against the one at which the input lets go; for an input with a
/// constant current, the current that is left against what it takes.
struct Held {
    double value = 0;
    double limit = 0;
    QuantityKind kind = QuantityKind::Voltage;
};

Held heldBy(const ControlInput& input, const Residual& residual) {
    if (input.resistance_ohm > 0) {
        return {residual.voltage_V(1 / input.resistance_ohm), input.off_V, QuantityKind::Voltage};
    }
    const double shunted_A = residual.shunt_S * input.off_V;
    return {std::max(0.0, residual.leakage_A - residual.drawn_A - shunted_A), input.current_A,
            QuantityKind::Current};
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const InputPath& input : inputPaths(survey)) {
        const Residual residual = residualOf(survey, *input.path);
        if (residual.leakage_A <= 0) {
            continue;
        }
        const Held held = heldBy(*input.input, residual);
        if (held.value < held.limit) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), input.path->part);
        const std::string output = nameOf(survey.circuit(), residual.over.front());
        Finding finding = newFinding(rule);
        finding.parts = {input.path->part, residual.over.front()};
        finding.value = held.value;
        finding.limit = held.limit;
        finding.kind = held.kind;
        finding.what =
            say("Off, {} still leaks {}: that leaves {} at the input {} of {}, which lets go "
                "below {}.",
                output, amount(residual.leakage_A, QuantityKind::Current), amount(held.value, held.kind),
                input.input->plus, name, amount(held.limit, held.kind));
        finding.why =
            say("The input stays on, or comes on by itself when it is warm: the pump does not stop.");
        finding.remedies = {bleedRemedy(survey, input, residual)};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kLeakageHoldsInput{"leakage-holds-input",
                                     words("Leakage keeps an input on"),
                                     SignalWord::Warning,
                                     words("the voltage at which the input goes off, the output's leakage"),
                                     false,
                                     check};

} // namespace pumpwright
