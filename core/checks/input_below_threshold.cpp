#include "core/checks/control_input.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/set_point.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

/// What energises a relay is at least 110 % of what it needs [Caltrans equipment electrical standards 8.3];
/// asked of inputs as well: common practice, no published source.
constexpr double kMargin = 1.10;

// Resistors as they are sold, largest first. Common practice, no published source.
constexpr std::array kResistors_ohm{100e3, 47e3,  22e3,  10e3, 4.7e3, 2.2e3, 1e3,
                                    470.0, 220.0, 100.0, 47.0, 22.0,  10.0};

/// What lies in a row with an input.
struct InRow {
    double diodes_V = 0;
    double others_V = 0; ///< that other loads lose in the same resistors
    double resistors_ohm = 0;
    std::optional<PartId> largest; ///< of the resistors
    double largest_ohm = 0;
};

void addBranch(const Survey& survey, const LoadPath& path, std::size_t number, InRow& row) {
    const Branch& branch = survey.branches()[number];
    const Part& part = survey.part(branch.part);
    if (branch.sort == BranchSort::Rectifier) {
        constexpr double kUsual_V = 0.7;
        row.diodes_V += nameplateValue(part, "forwardVoltage_V").value_or(kUsual_V);
    } else if (branch.sort == BranchSort::Passive) {
        const double own_ohm = nameplateValue(part, "resistance_ohm").value_or(0);
        const auto carried = survey.expectedCurrents().branches.find(number);
        const double others_A = carried == survey.expectedCurrents().branches.end()
                                    ? 0
                                    : carried->second.running_A - path.load.running_A;
        row.others_V += own_ohm * std::max(0.0, others_A);
        row.resistors_ohm += own_ohm;
        if (own_ohm > row.largest_ohm) {
            row.largest = branch.part;
            row.largest_ohm = own_ohm;
        }
    }
}

InRow inRowWith(const Survey& survey, const LoadPath& path) {
    InRow row;
    for (const std::vector<LeadStep>* way : {&path.feed, &path.back}) {
        for (const LeadStep& step : *way) {
            if (step.branch) {
                addBranch(survey, path, *step.branch, row);
            }
        }
    }
    return row;
}

double reaches_V(const ControlInput& input, const InRow& row, double supply_V) {
    const double behind_V = supply_V - row.diodes_V - row.others_V;
    return input.resistance_ohm > 0
               ? behind_V * input.resistance_ohm / (input.resistance_ohm + row.resistors_ohm)
               : behind_V - input.current_A * row.resistors_ohm;
}

std::vector<Remedy> remedies(const Survey& survey, const InputPath& input, const InRow& row) {
    const double supply_V = survey.circuit().limits.lowestSupply_V;
    std::vector<Remedy> all;
    const auto size = std::find_if(kResistors_ohm.begin(), kResistors_ohm.end(), [&](double one_ohm) {
        InRow smaller = row;
        smaller.resistors_ohm += one_ohm - row.largest_ohm;
        smaller.others_V *= row.largest_ohm > 0 ? one_ohm / row.largest_ohm : 1;
        return one_ohm < row.largest_ohm &&
               reaches_V(*input.input, smaller, supply_V) >= kMargin * input.input->on_V;
    });
    if (row.largest && size != kResistors_ohm.end()) {
        const Text text =
            say("{} to {}", nameOf(survey.circuit(), *row.largest), amount(*size, QuantityKind::Resistance));
        all.push_back({say("Change {}.", text), valueEdit(survey.circuit(), *row.largest, "resistance_ohm",
                                                          *size, say("Change {}", text))});
    }
    all.push_back({say("Choose a part whose input goes on at less as {}, or feed it past what lies in a "
                       "row with it.",
                       nameOf(survey.circuit(), input.path->part)),
                   {}});
    return all;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const double supply_V = survey.circuit().limits.lowestSupply_V;
    for (const InputPath& input : inputPaths(survey)) {
        const InRow row = inRowWith(survey, *input.path);
        const double gets_V = reaches_V(*input.input, row, supply_V);
        const double needs_V = kMargin * input.input->on_V;
        if (gets_V >= needs_V) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {input.path->part};
        finding.value = std::max(0.0, gets_V);
        finding.limit = needs_V;
        finding.kind = QuantityKind::Voltage;
        finding.what =
            say("With {} of supply the input {} of {} gets {}; to go on for certain it needs {}.",
                amount(supply_V, finding.kind), input.input->plus, nameOf(survey.circuit(), input.path->part),
                amount(finding.value, finding.kind), amount(needs_V, finding.kind));
        finding.why =
            say("While the supply is low, as at a start or with lamps on, the pump is not commanded.");
        finding.remedies = remedies(survey, input, row);
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kInputBelowThreshold{"input-below-threshold",
                                       words("Input may not go on at low supply"),
                                       SignalWord::Warning,
                                       words("the voltage at which the input goes on, and a tenth more: "
                                             "Caltrans equipment electrical standards 8.3; "
                                             "lowest supply set in the project's limits"),
                                       false,
                                       check};

} // namespace pumpwright
