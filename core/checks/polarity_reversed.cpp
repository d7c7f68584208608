#include "core/checks/current_loop.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

Finding findingFor(const Rule& rule, const Survey& survey, const PartId& id, const Polarity& polarity,
                   bool supply) {
    const std::string name = nameOf(survey.circuit(), id);
    Finding finding = newFinding(rule);
    finding.word = supply ? SignalWord::Danger : SignalWord::Warning;
    finding.parts = {id};
    finding.value = -survey.supplyVoltage_V();
    finding.limit = 0;
    finding.kind = QuantityKind::Voltage;
    finding.what = supply ? say("{} stands the wrong way round: its plus is on the body.", name)
                          : say("{} stands the wrong way round: plus is on {} and belongs on {}.", name,
                                polarity.minus, polarity.plus);
    finding.why = supply
                      ? say("Everything gets the wrong polarity: electronics fail at once, diodes short it.")
                      : say("The part does not work that way round, and may burn or burst.");
    finding.remedies = {{say("Exchange the wires on {} and {}.", polarity.plus, polarity.minus),
                         swapEdit(survey.circuit(), id, polarity.plus, polarity.minus,
                                  say("Exchange the wires of {}", name))}};
    return finding;
}

bool isReversed(const Survey& survey, const PartId& id, const Polarity& polarity) {
    const auto& netOf = survey.nets().netOf;
    return plusSide(survey, netOf.at({id, polarity.plus}), netOf.at({id, polarity.minus})) ==
           PlusSide::Second;
}

bool plusOnBody(const Survey& survey, const PartId& id, const Source& source) {
    const auto& netOf = survey.nets().netOf;
    const auto grounded = [&](const std::string& terminal) {
        return survey.nets().nets[netOf.at({id, terminal})].ground;
    };
    return grounded(source.plus) && !grounded(source.minus);
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const auto& [id, features] : survey.allFeatures()) {
        if (features.source && plusOnBody(survey, id, *features.source)) {
            findings.push_back(
                findingFor(rule, survey, id, {features.source->plus, features.source->minus}, true));
        }
        for (const Polarity& polarity : features.polarities) {
            if (isReversed(survey, id, polarity)) {
                findings.push_back(findingFor(rule, survey, id, polarity, false));
            }
        }
    }
    return findings;
}

} // namespace

extern const Rule kPolarityReversed{"polarity-reversed",
                                    words("Part the wrong way round"),
                                    SignalWord::Danger,
                                    words("common practice, no published source"),
                                    false,
                                    check};

} // namespace pumpwright
