#include "core/simulate/drive.h"

#include "core/simulate/drive_run.h"

namespace pumpwright {

DriveResult simulateDrive(const Circuit& circuit, const DriveOptions& options) {
    DriveRun run(circuit, options);
    run.advanceTo(circuit.plan.duration_s);
    return run.finish();
}

} // namespace pumpwright
