#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"
#include "core/files/json_text.h"
#include "core/files/speed_trace_csv.h"
#include "core/study/made_plan.h"
#include "core/units/quantity_kind.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

Outcome badUse(const std::string& text) {
    return {ExitStatus::BadUse, "", fmt::format("pumpwright: {}\n", text)};
}

Result<DrivePlan> planOf(const Request& request, const Circuit& circuit) {
    if (!request.speed.empty()) {
        const Result<SpeedTrace> trace = readSpeedTrace(request.speed);
        return trace ? planFromTrace(circuit, *trace) : tl::unexpected(trace.error());
    }
    const Result<double> duration_s =
        request.duration.empty() ? 0.0 : parseQuantity(request.duration, QuantityKind::Time);
    if (!duration_s) {
        return tl::unexpected(duration_s.error());
    }
    return madePlan(circuit, *findDriveSort(request.made), request.seed,
                    request.duration.empty() ? std::nullopt : std::optional(*duration_s));
}

SheetTable pressTable(const DrivePlan& plan) {
    SheetTable table{fmt::format("{}: {} presses in {}", plan.name, plan.presses.size(),
                                 formatQuantity(plan.duration_s, QuantityKind::Time)),
                     {"At, s", "Hold, s", "Force, N"},
                     {true, true, true},
                     {}};
    for (const Press& press : plan.presses) {
        table.rows.push_back({fmt::format("{:.1f}", press.at_s), fmt::format("{:.2f}", press.hold_s),
                              fmt::format("{:.1f}", press.force_N)});
    }
    return table;
}

std::string planJson(const Request& request, const Circuit& circuit, const DrivePlan& plan) {
    Json json{{"file", request.file},
              {"checkSum", circuitCheckSum(circuit)},
              {"name", plan.name},
              {"duration_s", plan.duration_s},
              {"presses", Json::array()}};
    for (const Press& press : plan.presses) {
        json["presses"].push_back({{"at_s", press.at_s},
                                   {"hold_s", press.hold_s},
                                   {"force_N", press.force_N},
                                   {"rise_s", press.rise_s}});
    }
    return jsonText(json);
}

} // namespace

Outcome planCommand(const Request& request) {
    if (request.made.empty() == request.speed.empty()) {
        return badUse("say either --make or --speed.");
    }
    if (!request.made.empty() && findDriveSort(request.made) == nullptr) {
        return badUse(fmt::format("--make \"{}\" is none of the drives that --help lists.", request.made));
    }
    Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    const Result<DrivePlan> plan = planOf(request, *circuit);
    if (!plan) {
        return unreadable(plan.error());
    }
    circuit->plan = *plan;
    if (!request.out.empty()) {
        if (const Result<void> written = writeCircuit(*circuit, request.out); !written) {
            return unreadable(written.error());
        }
    }
    return {ExitStatus::Fine,
            request.form == OutputForm::Json ? planJson(request, *circuit, *plan)
                                             : tableInForm(pressTable(*plan), request.form),
            ""};
}

} // namespace pumpwright
