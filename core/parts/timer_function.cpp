#include "core/parts/timer_function.h"

#include "core/units/text.h"

#include <algorithm>
#include <array>
#include <limits>

namespace pumpwright {
namespace {

constexpr double kNotDue = -1;
constexpr double kNever = std::numeric_limits<double>::infinity();
/// [V] that the supply must rise above the minimum before the timer works again.
constexpr double kSupplyDifferential_V = 0.5;

enum Place : std::size_t { kSupplied, kTriggered, kRunning, kDelayDue, kContact, kContactDue };

} // namespace

TimerFunction timerFunction(std::string_view id) {
    if (id == "single-shot") {
        return TimerFunction::SingleShot;
    }
    return id == "delay-on-make" ? TimerFunction::DelayOnMake : TimerFunction::DelayOnRelease;
}

bool TimerMemory::outputOn() const {
    return contactClosed() != (contactDue_s() < kNever);
}

TimerLogic::TimerLogic(const TimerValues& values) : m_values(values) {
    // Without a gap between the two the trigger could neither stay nor go.
    m_values.triggerOff_V = std::min(m_values.triggerOff_V, 0.95 * m_values.triggerOn_V);
}

std::span<const double> TimerLogic::atStart() {
    static constexpr std::array<double, TimerMemory::kSize> kAtRest{0, 0, 0, 0, 0, kNever};
    return kAtRest;
}

double TimerLogic::eventValue(std::size_t event, double supply_V, double trigger_V, double time_s,
                              TimerMemory memory) const {
    switch (static_cast<Event>(event)) {
    case SupplyComes:
        return memory.supplied() ? kNotDue : supply_V - m_values.minimumSupply_V - kSupplyDifferential_V;
    case SupplyGoes:
        // A hair below, so that a supply at just the minimum does not count as lost.
        return memory.supplied() ? m_values.minimumSupply_V - 1e-6 - supply_V : kNotDue;
    case TriggerBegins:
        return memory.triggered() ? kNotDue : trigger_V - m_values.triggerOn_V;
    case TriggerEnds:
        return memory.triggered() ? m_values.triggerOff_V - trigger_V : kNotDue;
    case DelayEnds:
        return memory.running() ? time_s - memory.delayDue_s() : kNotDue;
    case ContactMoves:
        return memory.contactDue_s() < kNever ? time_s - memory.contactDue_s() : kNotDue;
    case kEvents:
        break;
    }
    return kNotDue;
}

std::string TimerLogic::happen(std::size_t event, double time_s, std::span<double> memory) const {
    switch (static_cast<Event>(event)) {
    case SupplyComes:
        memory[kSupplied] = 1;
        if (memory[kTriggered] > 0) {
            beginTrigger(time_s, memory);
        }
        return "supply comes";
    case SupplyGoes:
        memory[kSupplied] = 0;
        memory[kRunning] = 0;
        setOutput(false, time_s, memory);
        return "supply too low";
    case TriggerBegins:
        memory[kTriggered] = 1;
        if (memory[kSupplied] > 0) {
            beginTrigger(time_s, memory);
        }
        return "trigger begins";
    case TriggerEnds:
        memory[kTriggered] = 0;
        if (memory[kSupplied] > 0) {
            endTrigger(time_s, memory);
        }
        return "trigger ends";
    case DelayEnds:
        memory[kRunning] = 0;
        setOutput(m_values.function == TimerFunction::DelayOnMake, time_s, memory);
        return "delay ends";
    case ContactMoves:
        memory[kContact] = 1 - memory[kContact];
        memory[kContactDue] = kNever;
        return memory[kContact] > 0 ? words("contacts close") : words("contacts open");
    case kEvents:
        break;
    }
    return {};
}

void TimerLogic::beginTrigger(double time_s, std::span<double> memory) const {
    const bool ignored = memory[kRunning] > 0 && !m_values.retriggerable;
    if (ignored) {
        return;
    }
    switch (m_values.function) {
    case TimerFunction::DelayOnRelease:
        memory[kRunning] = 0;
        setOutput(true, time_s, memory);
        return;
    case TimerFunction::SingleShot:
        startDelay(time_s, memory);
        setOutput(true, time_s, memory);
        return;
    case TimerFunction::DelayOnMake:
        startDelay(time_s, memory);
        return;
    }
}

void TimerLogic::endTrigger(double time_s, std::span<double> memory) const {
    switch (m_values.function) {
    case TimerFunction::DelayOnRelease:
        // An ignored trigger ends either while the delay still runs or when the output is long off.
        if (TimerMemory{memory}.outputOn() && memory[kRunning] <= 0) {
            startDelay(time_s, memory);
        }
        return;
    case TimerFunction::SingleShot:
        return;
    case TimerFunction::DelayOnMake:
        memory[kRunning] = 0;
        setOutput(false, time_s, memory);
        return;
    }
}

void TimerLogic::startDelay(double time_s, std::span<double> memory) const {
    memory[kRunning] = 1;
    memory[kDelayDue] = time_s + m_values.delay_s;
}

void TimerLogic::setOutput(bool on, double time_s, std::span<double> memory) const {
    const bool closed = memory[kContact] > 0;
    if (on == closed) {
        memory[kContactDue] = kNever; // a relay on its way turns back
    } else if (memory[kContactDue] == kNever) {
        memory[kContactDue] = time_s + m_values.operate_s;
    }
}

double TimerLogic::nextDue_s(TimerMemory memory) {
    const double contact_s = memory.contactDue_s();
    return memory.running() ? std::min(contact_s, memory.delayDue_s()) : contact_s;
}

} // namespace pumpwright
