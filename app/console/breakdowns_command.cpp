#include "app/console/commands.h"
#include "app/console/drive_texts.h"
#include "app/console/error_text.h"
#include "app/console/study_watch.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"
#include "core/files/json_text.h"
#include "core/sheet/breakdown_table.h"

namespace pumpwright {
namespace {

std::string_view subjectName(Subject subject) {
    return subject == Subject::Part ? "part" : subject == Subject::Wire ? "wire" : "hose";
}

Json brokenJson(const BreakdownOutcome& outcome) {
    Json list = Json::array();
    for (const Breakdown& one : outcome.broken) {
        list.push_back({{"sort", subjectName(one.subject)},
                        {"id", one.id},
                        {"failure", one.failure},
                        {"title", one.title}});
    }
    return list;
}

template <class IdType>
Json idsJson(const std::vector<IdType>& ids) {
    Json list = Json::array();
    for (const IdType& id : ids) {
        list.push_back(id.text);
    }
    return list;
}

Json timeJson(const std::optional<double>& at_s) {
    return at_s ? Json(*at_s) : Json(nullptr);
}

Json outcomeJson(const BreakdownOutcome& outcome) {
    return {{"broken", brokenJson(outcome)},
            {"consequence", consequenceName(outcome.consequence)},
            {"presses", outcome.presses},
            {"lackingPresses", outcome.lacking},
            {"worst_share", outcome.worstShare},
            {"lostAt_s", timeJson(outcome.lostAt_s)},
            {"warnedAt_s", timeJson(outcome.warnedAt_s)},
            {"noticed", outcome.noticed},
            {"openedFuses", idsJson(outcome.openedFuses)},
            {"overheatedWires", idsJson(outcome.overheatedWires)},
            {"stopped", idsJson(outcome.stopped)},
            {"runsOn", idsJson(outcome.runsOn)},
            {"status", statusName(outcome.status)},
            {"message", outcome.message}};
}

std::string breakdownsJson(const Request& request, const Circuit& circuit, const BreakdownStudy& study) {
    Json json{{"file", request.file}, {"checkSum", circuitCheckSum(circuit)}, {"breakdowns", Json::array()}};
    for (const BreakdownOutcome& outcome : study.outcomes) {
        json["breakdowns"].push_back(outcomeJson(outcome));
    }
    return jsonText(json);
}

} // namespace

Outcome breakdownsCommand(const Request& request) {
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    BreakdownOptions options;
    options.pairs = request.pairs;
    StudyWatch watch;
    watch.watch(options);
    const BreakdownStudy study = runBreakdowns(*circuit, options);
    if (request.form == OutputForm::Json) {
        return watch.outcome({ExitStatus::Fine, breakdownsJson(request, *circuit, study), ""}, request.form);
    }
    return watch.outcome({ExitStatus::Fine, tableInForm(breakdownTable(*circuit, study), request.form), ""},
                         request.form);
}

} // namespace pumpwright
