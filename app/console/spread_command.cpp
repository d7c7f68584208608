#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/study_watch.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"
#include "core/files/json_text.h"
#include "core/files/spread_rows.h"
#include "core/files/whole_file.h"
#include "core/sheet/spread_tables.h"
#include "core/study/spread.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

constexpr std::size_t kMostBytes = std::size_t{1} << 30U;

Json proportionJson(const Proportion& proportion) {
    return {{"share", proportion.share}, {"low", proportion.low}, {"high", proportion.high}};
}

Json percentilesJson(const std::optional<Percentiles>& percentiles) {
    return percentiles ? Json{{"p5", percentiles->p5}, {"p50", percentiles->p50}, {"p95", percentiles->p95}}
                       : Json(nullptr);
}

Json orNull(const std::optional<double>& value) {
    return value ? Json(*value) : Json(nullptr);
}

Json influencesJson(const SpreadSummary& summary) {
    Json list = Json::array();
    for (const Influence& influence : summary.influences) {
        list.push_back({{"name", influence.what.name},
                        {"onClosings", orNull(influence.onClosings)},
                        {"onLeastAssist", orNull(influence.onAssist)},
                        {"onLowestVacuum", orNull(influence.onVacuum)}});
    }
    return list;
}

std::string spreadJson(const Request& request, const Circuit& circuit, const SpreadSummary& summary) {
    return jsonText({{"file", request.file},
                     {"checkSum", circuitCheckSum(circuit)},
                     {"seed", request.seed},
                     {"from", request.from},
                     {"count", request.count},
                     {"finished", summary.finished},
                     {"stopped", summary.stopped},
                     {"endedSure", summary.endedSure},
                     {"chattering", summary.chattering},
                     {"chatters", proportionJson(summary.chatters)},
                     {"lacking", summary.lacking},
                     {"lacks", proportionJson(summary.lacks)},
                     {"lowestVacuum_Pa", percentilesJson(summary.lowestVacuum_Pa)},
                     {"leastAssist_share", percentilesJson(summary.leastAssistShare)},
                     {"ranked", summary.ranked},
                     {"influences", influencesJson(summary)}});
}

std::string spreadText(const Request& request, const SpreadSummary& summary) {
    std::string text =
        fmt::format("Spread: cars from {} of seed {}, {} driven to the end, {} stopped before{}\n\n",
                    request.from, request.seed, summary.finished, summary.stopped,
                    summary.endedSure ? "; ended early, sure enough" : "");
    std::string between;
    for (const SheetTable& table : spreadTables(summary)) {
        text += between + textTable(table);
        between = "\n";
    }
    return text;
}

/// For people and programs; CSV has rows instead.
Outcome spreadOutcome(const Request& request, const Circuit& circuit, const SpreadSummary& summary) {
    return {ExitStatus::Fine,
            request.form == OutputForm::Json ? spreadJson(request, circuit, summary)
                                             : spreadText(request, summary),
            ""};
}

/// Adds up rows of runs before, so that they come to the same as one run.
Outcome joined(Request request, const Circuit& circuit) {
    std::string text;
    for (const std::string& path : request.joined) {
        const Result<std::string> part = fileText(path, kMostBytes);
        if (!part) {
            return unreadable(part.error());
        }
        text += *part + (part->ends_with('\n') ? "" : "\n");
    }
    const Result<SpreadRows> rows =
        parseSpreadRows(text, request.joined.size() == 1 ? request.joined.front() : "");
    if (!rows) {
        return unreadable(rows.error());
    }
    if (rows->origin.checkSum != circuitCheckSum(circuit)) {
        return {ExitStatus::BadUse, "",
                "pumpwright: the rows are of another circuit: its check sum is not the one of this file.\n"};
    }
    request.seed = rows->origin.seed;
    request.from = rows->cars.front().number;
    request.count = rows->cars.size();
    SpreadTally tally(circuit, request.seed);
    std::string csv = spreadHead();
    for (const SpreadCar& car : rows->cars) {
        tally.add(car);
        csv += request.form == OutputForm::Csv ? spreadRow(rows->origin, car) : "";
    }
    return request.form == OutputForm::Csv ? Outcome{ExitStatus::Fine, csv, ""}
                                           : spreadOutcome(request, circuit, tally.summary());
}

Outcome driven(const Request& request, const Circuit& circuit) {
    const SpreadOrigin origin{circuitCheckSum(circuit), request.seed};
    std::string rows = spreadHead();
    SpreadOptions options;
    options.seed = request.seed;
    options.from = request.from;
    options.count = request.count;
    options.sureTo = request.sureTo;
    if (request.form == OutputForm::Csv) {
        options.partial = [&](const SpreadCar& car, const SpreadTally&) { rows += spreadRow(origin, car); };
    }
    StudyWatch watch;
    watch.watch(options);
    const SpreadSummary summary = runSpread(circuit, options);
    return watch.outcome(request.form == OutputForm::Csv ? Outcome{ExitStatus::Fine, rows, ""}
                                                         : spreadOutcome(request, circuit, summary),
                         request.form);
}

} // namespace

Outcome spreadCommand(const Request& request) {
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    return request.joined.empty() ? driven(request, *circuit) : joined(request, *circuit);
}

} // namespace pumpwright
