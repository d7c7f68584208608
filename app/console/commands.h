#pragma once

#include "app/console/outcome.h"
#include "app/console/request.h"
#include "core/simulate/drive.h"
#include "core/units/result.h"

namespace pumpwright {

// One function for each command, in the file of the same name. Those that draw are in drawing/.

Outcome checkCommand(const Request& request);
Outcome wiresCommand(const Request& request);
Outcome partsCommand(const Request& request);
Outcome trialsCommand(const Request& request);
Outcome breakdownsCommand(const Request& request);
Outcome spreadCommand(const Request& request);
Outcome sweepCommand(const Request& request);
Outcome fitCommand(const Request& request);
Outcome planCommand(const Request& request);
Outcome netsCommand(const Request& request);
Outcome compareCommand(const Request& request);

/// Writes the drive chart to the path; needs Qt, so it is handed in.
using ChartWriter = Result<void> (*)(const std::string& path, const Circuit& circuit,
                                     const DriveResult& drive);
Outcome driveCommand(const Request& request, ChartWriter writeChart = nullptr);

/// Any of them.
Outcome runCommand(const Request& request);

} // namespace pumpwright
