#include "core/checks/survey.h"

namespace pumpwright {
namespace {

void nameSuspects(const Survey& survey, Finding& finding) {
    for (const std::string& id : survey.drive()->suspects) {
        if (survey.circuit().parts.contains(PartId{id})) {
            finding.parts.push_back(PartId{id});
        } else if (survey.circuit().wires.contains(WireId{id})) {
            finding.wires.push_back(WireId{id});
        }
    }
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const DriveResult* drive = survey.drive();
    if (drive == nullptr || drive->status != DriveStatus::Stopped) {
        return {};
    }
    Finding finding = newFinding(rule);
    nameSuspects(survey, finding);
    finding.at_s = drive->recording.duration_s;
    finding.value = drive->recording.duration_s;
    finding.limit = survey.circuit().plan.duration_s;
    finding.kind = QuantityKind::Time;
    finding.what = drive->message;
    finding.why =
        say("What the rest of the drive would show, chatter or a press without assist, is not known.");
    finding.remedies = {{say("Look at the values and wires of the part that the message names."), {}}};
    return {finding};
}

} // namespace

extern const Rule kDriveCutShort{"drive-cut-short",
                                 words("Drive not simulated to its end"),
                                 SignalWord::Warning,
                                 words("common practice, no published source"),
                                 true,
                                 check};

} // namespace pumpwright
