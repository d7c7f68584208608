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
        finding.what = say("Both ends of {} are on {}.", name, nameOf(survey.circuit(), wire.from));
        finding.why = say("It joins nothing; most likely one end belongs elsewhere.");
        finding.remedies = {{say("Delete {}.", name), Edit{say("Delete {}", name).english(), {takeWire(id)}}},
                            {say("Put one end of {} where it belongs.", name), {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kWireToItself{"wire-to-itself",
                                words("Wire joins a terminal to itself"),
                                SignalWord::Caution,
                                words("common practice, no published source"),
                                false,
                                check};

} // namespace pumpwright
