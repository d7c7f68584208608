#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/study_watch.h"
#include "app/console/text_table.h"
#include "core/files/bench_log_csv.h"
#include "core/files/circuit_file.h"
#include "core/files/csv_text.h"
#include "core/files/json_text.h"
#include "core/sheet/fit_tables.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

Outcome badUse(const std::string& text) {
    return {ExitStatus::BadUse, "", fmt::format("pumpwright: {}\n", text)};
}

struct ReadLog {
    BenchLog log;
    std::string note; ///< what of it was not kept
};

/// The log as the command line says it is to be read.
Result<ReadLog> readLog(const Request& request, const Circuit& circuit) {
    const Result<CsvNumbers> table = readCsvNumbers(request.log);
    if (!table) {
        return tl::unexpected(table.error());
    }
    LogReading reading = guessedReading(circuit, *table);
    for (const std::string& column : request.columns) {
        if (const Result<void> added = addToReading(reading, *table, column); !added) {
            return tl::unexpected(added.error());
        }
    }
    const Result<double> offset_s = parseQuantity(request.timeOffset, QuantityKind::Time);
    if (!offset_s) {
        return tl::unexpected(offset_s.error());
    }
    reading.timeOffset_s = *offset_s;
    return benchLog(circuit, *table, reading).map([&](BenchLog log) {
        return ReadLog{std::move(log), thinningNote(*table)};
    });
}

std::vector<std::string> warningsOf(const FitResult& result, const std::string& note) {
    std::vector<std::string> warnings;
    for (const Text& warning : fitWarnings(result)) {
        warnings.push_back(warning.english());
    }
    if (!note.empty()) {
        warnings.push_back(note);
    }
    return warnings;
}

Json fitJson(const Request& request, const Circuit& circuit, const FitResult& result,
             const std::vector<std::string>& warnings) {
    Json json{{"file", request.file},    {"checkSum", circuitCheckSum(circuit)},
              {"log", request.log},      {"settled", result.status == FitResult::Status::Finished},
              {"drives", result.drives}, {"values", Json::array()},
              {"traces", Json::array()}, {"warnings", warnings}};
    for (const FittedValue& value : result.values) {
        json["values"].push_back(
            {{"name", value.what.name},
             {"unit", siUnit(value.what.spec->kind)},
             {"before", value.before},
             {"fitted", value.value},
             {"standardError", value.standardError ? Json(*value.standardError) : Json(nullptr)},
             {"atLimit", value.isAtLimit}});
    }
    for (const TraceMatch& match : result.traces) {
        json["traces"].push_back({{"name", match.name},
                                  {"unit", siUnit(match.kind)},
                                  {"readings", match.readings},
                                  {"rmsBefore", match.before},
                                  {"rmsFitted", match.after}});
    }
    return json;
}

std::string fitCsv(const FitResult& result) {
    std::string text = csvLine({"name", "unit", "before", "fitted", "standardError"});
    for (const FittedValue& value : result.values) {
        text += csvLine({value.what.name, std::string(siUnit(value.what.spec->kind)),
                         fmt::format("{}", value.before), fmt::format("{}", value.value),
                         value.standardError ? fmt::format("{}", *value.standardError) : ""});
    }
    return text;
}

std::string fitText(const FitResult& result, const std::vector<std::string>& warnings) {
    std::string text;
    for (const SheetTable& table : fitTables(result)) {
        text += textTable(table) + "\n";
    }
    for (const std::string& warning : warnings) {
        text += wrapped(warning, kTextWidth, "") + "\n";
    }
    return text;
}

std::string output(const Request& request, const Circuit& circuit, const FitResult& result,
                   const std::vector<std::string>& warnings) {
    switch (request.form) {
    case OutputForm::Json:
        return jsonText(fitJson(request, circuit, result, warnings));
    case OutputForm::Csv:
        return fitCsv(result);
    case OutputForm::Markdown: // check alone knows it
    case OutputForm::People:
        break;
    }
    return fitText(result, warnings);
}

/// The fitted circuit in a file, if one was asked for.
Result<void> writeFitted(const Request& request, Circuit circuit, const FitResult& result) {
    if (request.out.empty()) {
        return {};
    }
    applyEdit(circuit, fitEdit(circuit, result));
    return writeCircuit(circuit, request.out);
}

} // namespace

Outcome fitCommand(const Request& request) {
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    std::vector<Adjustable> what;
    for (const std::string& name : request.values) {
        const Result<Adjustable> found = findAdjustable(*circuit, name);
        if (!found) {
            return badUse(found.error().text);
        }
        what.push_back(*found);
    }
    const Result<ReadLog> log = readLog(request, *circuit);
    if (!log) {
        return unreadable(log.error());
    }
    StudyOptions options;
    StudyWatch watch;
    watch.watch(options);
    const FitResult result = runFit(*circuit, log->log, what, options);
    if (result.status == FitResult::Status::Useless) {
        return {ExitStatus::Unreadable, "", fmt::format("pumpwright: {}\n", result.message)};
    }
    if (result.status == FitResult::Status::Cancelled) {
        return watch.outcome({}, request.form);
    }
    if (const Result<void> written = writeFitted(request, *circuit, result); !written) {
        return unreadable(written.error());
    }
    return {result.status == FitResult::Status::Finished ? ExitStatus::Fine : ExitStatus::Findings,
            output(request, *circuit, result, warningsOf(result, log->note)), ""};
}

} // namespace pumpwright
