#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// The semiconductor that switches a load, as number of its branch.
std::optional<std::size_t> semiconductorOf(const Survey& survey, const LoadPath& path) {
    for (const std::size_t number : controlsOf(survey, path)) {
        if (contactOf(survey, survey.branches()[number]).semiconductor) {
            return number;
        }
    }
    return std::nullopt;
}

bool hasFreewheel(const Survey& survey, const Branch& motor) {
    const auto& near = survey.branchesAt(motor.fromNet);
    return std::any_of(near.begin(), near.end(), [&](std::size_t number) {
        const Branch& other = survey.branches()[number];
        const bool across = (other.fromNet == motor.fromNet && other.toNet == motor.toNet) ||
                            (other.fromNet == motor.toNet && other.toNet == motor.fromNet);
        return across && other.sort == BranchSort::Rectifier;
    });
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const LoadPath& path : survey.loadPaths()) {
        const auto switched =
            path.load.sort == LoadSort::Motor && path.source ? semiconductorOf(survey, path) : std::nullopt;
        if (!switched || hasFreewheel(survey, survey.branches()[path.branch])) {
            continue;
        }
        const Branch& output = survey.branches()[*switched];
        const std::string motor = nameOf(survey.circuit(), path.part);
        Finding finding = newFinding(rule);
        finding.parts = {output.part, path.part};
        finding.value = 0;
        finding.limit = 1;
        finding.what = say(
            "{} switches {} off, and the motor's {} find no way but through the semiconductor, which "
            "breaks down at {}.",
            nameOf(survey.circuit(), output.part), motor, amount(path.load.running_A, QuantityKind::Current),
            amount(contactOf(survey, output).withstand_V, QuantityKind::Voltage));
        finding.why =
            say("Every switch-off drives the semiconductor into breakdown; in the end it fails closed.");
        finding.remedies = {
            {say("Fit a diode across {}, cathode to {}.", motor,
                 nameOf(survey.circuit(), End{path.part, path.load.from})),
             diodeEdit(survey.circuit(), {path.part, path.load.from}, {path.part, path.load.to},
                       path.load.running_A, say("Add a diode across {}", motor))}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kMotorWithoutFreewheel{"motor-without-freewheel",
                                         words("Motor on a semiconductor without a freewheel diode"),
                                         SignalWord::Caution,
                                         words("common practice, no published source"),
                                         false,
                                         check};

} // namespace pumpwright
