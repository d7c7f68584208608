#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const auto& [id, wire] : survey.circuit().wires) {
        if (wire.from != wire.to) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), id);
        Finding finding = newFinding(rule);
        finding.parts = {wire.from.part};
        finding.wires = {id};
        finding.value = 1;
        finding.limit = 2;
        finding.what = fmt::format("Both ends of {} are on {}.", name, nameOf(survey.circuit(), wire.from));
        finding.why = "It joins nothing; most likely one end belongs elsewhere.";
        finding.remedies = {{"Delete " + name + ".", Edit{"Delete " + name, {takeWire(id)}}},
                            {"Put one end of " + name + " where it belongs.", {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kWireToItself{"wire-to-itself",
                                "Wire joins a terminal to itself",
                                SignalWord::Caution,
                                "common practice, no published source",
                                false,
                                check};

} // namespace pumpwright
