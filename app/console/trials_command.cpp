#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/outcome_json.h"
#include "app/console/price_list.h"
#include "app/console/study_watch.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"
#include "core/files/json_text.h"
#include "core/sheet/trial_tables.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

Json outcomeJson(const TrialOutcome& outcome, const PriceList& prices) {
    Json json{{"id", outcome.id}, {"name", outcome.name}};
    addOutcome(json, outcome);
    json["price"] = billOf(outcome.circuit, prices).total;
    json["addedParts"] = Json::array();
    for (const PartId& id : outcome.addedParts) {
        json["addedParts"].push_back(partJson(outcome.circuit, id));
    }
    return json;
}

std::string trialsJson(const Request& request, const Circuit& circuit,
                       const std::vector<TrialOutcome>& outcomes, const PriceList& prices) {
    Json json{{"file", request.file},
              {"checkSum", circuitCheckSum(circuit)},
              {"currency", circuit.currency},
              {"trials", Json::array()}};
    for (const TrialOutcome& outcome : outcomes) {
        json["trials"].push_back(outcomeJson(outcome, prices));
    }
    return jsonText(json);
}

/// One row for each trial with the plain values of the JSON.
std::string trialsCsv(const std::vector<TrialOutcome>& outcomes, const PriceList& prices) {
    std::vector<Json> rows;
    for (const TrialOutcome& outcome : outcomes) {
        rows.push_back(outcomeJson(outcome, prices));
    }
    return flatCsv(rows, "addedParts");
}

std::string trialsText(const std::vector<TrialOutcome>& outcomes, const PriceList& prices) {
    constexpr char kLegend[] =
        "A contact chatters where it closes more than twice in 2 s without the plan's doing. Reserve: how\n"
        "many times the plan's hardest press still gets full assist after the drive, with the pump dead.\n"
        "Findings count where nobody accepted them.\n";
    const std::string none =
        outcomes.size() > 1 ? ""
                            : "The circuit holds no trials; this is what it comes to as it is drawn.\n\n";
    return none + textTable(trialIdeas(outcomes)) + "\n" + textTable(trialResults(outcomes, prices)) + "\n" +
           kLegend;
}

std::string output(const Request& request, const Circuit& circuit, const std::vector<TrialOutcome>& outcomes,
                   const PriceList& prices) {
    switch (request.form) {
    case OutputForm::Json:
        return trialsJson(request, circuit, outcomes, prices);
    case OutputForm::Csv:
        return trialsCsv(outcomes, prices);
    case OutputForm::Markdown: // check alone knows it
    case OutputForm::People:
        break;
    }
    return trialsText(outcomes, prices);
}

} // namespace

Outcome trialsCommand(const Request& request) {
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    const Result<PriceList> prices = priceList();
    if (!prices) {
        return unreadable(prices.error());
    }
    TrialOptions options;
    StudyWatch watch;
    watch.watch(options);
    const std::vector<TrialOutcome> outcomes = runTrials(*circuit, options);
    if (outcomes.empty()) { // interrupted before the first
        return watch.outcome({}, request.form);
    }
    Outcome outcome{ExitStatus::Fine, output(request, *circuit, outcomes, *prices), ""};
    for (const TrialOutcome& one : outcomes) {
        if (one.status != DriveStatus::Finished) {
            outcome.status = ExitStatus::Findings;
            outcome.err +=
                fmt::format("pumpwright: the drive of \"{}\" stopped: {}\n", one.name, one.message);
        }
    }
    return watch.outcome(std::move(outcome), request.form);
}

} // namespace pumpwright
