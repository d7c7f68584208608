#include "core/study/drive_numbers.h"

#include "core/checks/contact_chatter.h"
#include "core/checks/press_assist.h"
#include "core/study/drive_summary.h"

#include <algorithm>

namespace pumpwright {

DriveNumbers driveNumbers(const Circuit& circuit, const Recording& recording) {
    DriveNumbers numbers;
    const ContactChatter chatter = worstChatter(circuit, recording);
    numbers.mostClosings = chatter.closings;
    numbers.chatters = chatter.chatters();
    for (const auto& [id, part] : circuit.parts) {
        for (const PressAssist& press : pressAssists(circuit.plan, recording, id)) {
            ++numbers.presses;
            numbers.lackingPresses += press.isFull() ? 0 : 1;
            numbers.leastAssistShare = std::clamp(press.share(), 0.0, numbers.leastAssistShare);
        }
    }
    const DriveSummary summary = driveSummary(circuit, recording);
    for (const PressSummary& press : summary.presses) {
        numbers.lowestVacuum_Pa =
            std::min(numbers.lowestVacuum_Pa.value_or(press.vacuumLowest_Pa), press.vacuumLowest_Pa);
    }
    for (const MotorSummary& motor : summary.motors) {
        numbers.pumpStarts += motor.starts;
        numbers.pumpRunning_s += motor.running_s;
    }
    return numbers;
}

} // namespace pumpwright
