#include "app/console/commands.h"
#include "app/console/drive_texts.h"
#include "app/console/error_text.h"
#include "app/console/study_watch.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"
#include "core/files/csv_text.h"
#include "core/files/json_text.h"
#include "core/sheet/spread_tables.h"
#include "core/study/spread.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::string carCsv(const SpreadCar& car) {
    const DriveNumbers& numbers = car.numbers;
    return csvLine({fmt::format("{}", car.number), std::string(statusName(car.status)),
                    numbers.chatters ? "true" : "false", fmt::format("{}", numbers.mostClosings),
                    fmt::format("{}", numbers.lackingPresses), fmt::format("{}", numbers.leastAssistShare),
                    numbers.lowestVacuum_Pa ? fmt::format("{}", *numbers.lowestVacuum_Pa) : "",
                    fmt::format("{}", numbers.pumpStarts), fmt::format("{}", numbers.pumpRunning_s)});
}

Json proportionJson(const Proportion& proportion) {
    return {{"share", proportion.share}, {"low", proportion.low}, {"high", proportion.high}};
}

Json percentilesJson(const std::optional<Percentiles>& percentiles) {
    return percentiles ? Json{{"p5", percentiles->p5}, {"p50", percentiles->p50}, {"p95", percentiles->p95}}
                       : Json(nullptr);
}

std::string spreadJson(const Request& request, const Circuit& circuit, const SpreadSummary& summary) {
    return jsonText({{"file", request.file},
                     {"checkSum", circuitCheckSum(circuit)},
                     {"seed", request.seed},
                     {"from", request.from},
                     {"count", request.count},
                     {"finished", summary.finished},
                     {"stopped", summary.stopped},
                     {"chattering", summary.chattering},
                     {"chatters", proportionJson(summary.chatters)},
                     {"lacking", summary.lacking},
                     {"lacks", proportionJson(summary.lacks)},
                     {"lowestVacuum_Pa", percentilesJson(summary.lowestVacuum_Pa)},
                     {"leastAssist_share", percentilesJson(summary.leastAssistShare)}});
}

std::string spreadText(const Request& request, const SpreadSummary& summary) {
    std::string text = fmt::format(
        "Spread: cars {} to {} of seed {}, {} driven to the end, {} stopped before\n\n", request.from,
        request.from + request.count - 1, request.seed, summary.finished, summary.stopped);
    std::string between;
    for (const SheetTable& table : spreadTables(summary)) {
        text += between + textTable(table);
        between = "\n";
    }
    return text;
}

} // namespace

Outcome spreadCommand(const Request& request) {
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    std::string rows = csvLine({"car", "status", "chatters", "mostClosings", "lackingPresses",
                                "leastAssist_share", "lowestVacuum_Pa", "pumpStarts", "pumpRunning_s"});
    SpreadOptions options;
    options.seed = request.seed;
    options.from = request.from;
    options.count = request.count;
    if (request.form == OutputForm::Csv) {
        options.partial = [&](const SpreadCar& car) { rows += carCsv(car); };
    }
    StudyWatch watch;
    watch.watch(options);
    const SpreadSummary summary = runSpread(*circuit, options);
    switch (request.form) {
    case OutputForm::Csv:
        return watch.outcome({ExitStatus::Fine, rows, ""}, request.form);
    case OutputForm::Json:
        return watch.outcome({ExitStatus::Fine, spreadJson(request, *circuit, summary), ""}, request.form);
    case OutputForm::Markdown: // check alone knows it
    case OutputForm::People:
        break;
    }
    return watch.outcome({ExitStatus::Fine, spreadText(request, summary), ""}, request.form);
}

} // namespace pumpwright
