#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/lead_values.h"
#include "core/checks/running_state.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// [s] after the begin of a run, in which the inrush is over.
constexpr double kStarting_s = 0.5;
/// [s] before its end, in which the current of an opened circuit still fades away.
constexpr double kStopping_s = 0.05;

struct LowVoltage {
    double value_V = 0;
    std::optional<double> at_s; ///< in the drive; empty: by nameplates, at the project's lowest supply
};

double onResistance_ohm(const Survey& survey, const std::vector<LeadStep>& way) {
    double sum_ohm = 0;
    for (const LeadStep& step : way) {
        if (step.branch && survey.branches()[*step.branch].sort == BranchSort::Contact) {
            sum_ohm += contactOf(survey, survey.branches()[*step.branch]).onResistance_ohm;
        }
    }
    return sum_ohm;
}

LowVoltage byNameplates(const Survey& survey, const LoadPath& pump) {
    double leads_ohm = 0;
    for (const std::vector<LeadStep>* way : {&pump.feed, &pump.back}) {
        leads_ohm += resistance_ohm(survey, *way) + onResistance_ohm(survey, *way);
    }
    return {survey.circuit().limits.lowestSupply_V - pump.load.running_A * leads_ohm, std::nullopt};
}

/// The lowest voltage between the pump's terminals while it runs, or nothing without a drive.
std::optional<LowVoltage> inDrive(const Recording& recording, const LoadPath& pump) {
    const Channel* plus = recording.terminal({pump.part, pump.load.from});
    const Channel* minus = recording.terminal({pump.part, pump.load.to});
    const Channel* current = recording.part(pump.part, probe::kCurrent);
    if (plus == nullptr || minus == nullptr || current == nullptr) {
        return std::nullopt;
    }
    std::optional<LowVoltage> lowest;
    for (const TimeSpan& run : spansAbove(*current, kRunningShare * pump.load.running_A)) {
        const auto& times_s = plus->times_s;
        const auto from = std::lower_bound(times_s.begin(), times_s.end(), run.from_s + kStarting_s);
        for (auto time_s = from; time_s != times_s.end() && *time_s < run.to_s - kStopping_s; ++time_s) {
            const double value_V = plus->at(*time_s) - minus->at(*time_s);
            if (!lowest || value_V < lowest->value_V) {
                lowest = {value_V, *time_s};
            }
        }
    }
    return lowest;
}

std::vector<Remedy> remedies(const Survey& survey, const LoadPath& pump) {
    return {{say("Lay thicker or shorter wires to {} and back.", nameOf(survey.circuit(), pump.part)), {}},
            {say("Let the pump rest while the engine is cranked: feed its control from a contact that opens "
                 "then."),
             {}},
            {say("Charge or change the battery, and clean its terminals."), {}}};
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const std::size_t number : pumpPaths(survey)) {
        const LoadPath& pump = survey.loadPaths()[number];
        LowVoltage low = byNameplates(survey, pump);
        const auto drive = survey.recording() == nullptr ? std::nullopt : inDrive(*survey.recording(), pump);
        low = drive && drive->value_V < low.value_V ? *drive : low;
        if (!pump.source || pump.load.minimum_V <= 0 || low.value_V >= pump.load.minimum_V) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), pump.part);
        Finding finding = newFinding(rule);
        finding.parts = {pump.part};
        finding.value = std::max(0.0, low.value_V);
        finding.limit = pump.load.minimum_V;
        finding.kind = QuantityKind::Voltage;
        finding.at_s = low.at_s;
        finding.what = say("{} gets {} ({}); it works down to {}.", name, amount(finding.value, finding.kind),
                           low.at_s ? inDriveAt(*low.at_s)
                                    : say("with {} at the battery, as in cranking or at full load",
                                          amount(survey.circuit().limits.lowestSupply_V, finding.kind)),
                           amount(finding.limit, finding.kind));
        finding.why = say("A pump that gets too little voltage stalls, and the vacuum is not made good.");
        finding.remedies = remedies(survey, pump);
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kPumpVoltageLow{
    "pump-voltage-low",
    words("Too little voltage at the pump"),
    SignalWord::Warning,
    words("the pump's lowest voltage; ISO 16750-2, code D, for the lowest supply"),
    false,
    check};

} // namespace pumpwright
