#include "core/checks/contact_chatter.h"
#include "core/checks/drive_reading.h"
#include "core/checks/press_assist.h"
#include "core/checks/wording.h"
#include "core/parts/conductor.h"
#include "core/parts/part_kind.h"
#include "core/study/breakdown_outcome_p.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// [s] A lamp or buzzer that differs for as long as this is noticed. Common practice, no published source.
constexpr double kNoticed_s = 0.5;
/// [K] above its class that insulation stands for some hours (thermal overload, value from memory of ISO
/// 6722-1).
constexpr double kOverload_K = 50;
/// A motor above this share of its running current runs.
constexpr double kRunningShare = 0.1;
/// A motor that runs at the end and has run for this share of the drive does not stop any more.
constexpr double kRunsOnShare = 0.9;

/// Times at which a load runs, lights or sounds; `known` is false where the recording does not tell.
struct OnTimes {
    bool known = false;
    bool isMotor = false;
    std::vector<TimeSpan> spans;
    double total_s() const {
        double total = 0;
        for (const TimeSpan& span : spans) {
            total += span.length_s();
        }
        return total;
    }
};

OnTimes onTimes(const Circuit& circuit, const Recording& recording, const PartId& id) {
    const Part& part = circuit.parts.at(id);
    const std::vector<Load> loads = kindOf(part).features(part).loads;
    const auto motor = std::ranges::find(loads, LoadSort::Motor, &Load::sort);
    if (motor != loads.end()) {
        const Channel* current = recording.part(id, probe::kCurrent);
        return current == nullptr
                   ? OnTimes{}
                   : OnTimes{true, true, spansAbove(*current, kRunningShare * motor->running_A)};
    }
    const Channel* energised = recording.part(id, probe::kEnergised);
    const bool shows = kindOf(part).letter() == "P";
    return energised == nullptr || !shows ? OnTimes{} : OnTimes{true, false, spansAbove(*energised, 0.5)};
}

/// The first instant from which something is on for long enough that is off in the sound drive.
std::optional<double> firstDifference(const std::vector<TimeSpan>& now, const std::vector<TimeSpan>& sound) {
    for (const TimeSpan& span : now) {
        double from_s = span.from_s;
        for (const TimeSpan& covered : sound) {
            if (covered.to_s <= from_s || covered.from_s >= span.to_s) {
                continue;
            }
            if (covered.from_s - from_s >= kNoticed_s) {
                return from_s;
            }
            from_s = covered.to_s;
        }
        if (span.to_s - from_s >= kNoticed_s) {
            return from_s;
        }
    }
    return std::nullopt;
}

class Comparison {
public:
    Comparison(const SoundDrive& sound, const Circuit& broken, const DriveResult& drive)
        : m_sound(sound), m_broken(broken), m_drive(drive) {}

    BreakdownOutcome outcome() {
        m_outcome.status = m_drive.status;
        m_outcome.message = m_drive.message;
        compareLoads();
        comparePresses();
        compareChatter();
        compareFuses();
        compareWires();
        m_outcome.consequence = consequence();
        return std::move(m_outcome);
    }

private:
    std::string name(const PartId& id) const { return nameOf(m_sound.circuit, id); }
    static std::string time(double time_s) { return amount(time_s, QuantityKind::Time); }

    void compareLoads() {
        for (const auto& [id, part] : m_sound.circuit.parts) {
            const OnTimes sound = onTimes(m_sound.circuit, m_sound.drive.recording, id);
            const OnTimes now =
                m_broken.parts.contains(id) ? onTimes(m_broken, m_drive.recording, id) : OnTimes{};
            if (!sound.known || !now.known) {
                continue;
            }
            if (now.spans.empty() && !sound.spans.empty()) {
                m_outcome.stopped.push_back(id);
            }
            now.isMotor ? compareMotor(id, now, sound) : compareSignal(id, part, now, sound);
        }
    }

    void compareMotor(const PartId& id, const OnTimes& now, const OnTimes& sound) {
        const double end_s = m_drive.recording.duration_s;
        const bool atEnd = !now.spans.empty() && now.spans.back().to_s >= end_s - kNoticed_s;
        const bool soundStops = sound.total_s() < kRunsOnShare * m_sound.drive.recording.duration_s;
        if (atEnd && soundStops && now.total_s() >= kRunsOnShare * end_s) {
            m_outcome.runsOn.push_back(id);
            m_outcome.noticed.push_back(name(id) + " runs and does not stop");
        }
    }

    void compareSignal(const PartId& id, const Part& part, const OnTimes& now, const OnTimes& sound) {
        if (const auto at_s = firstDifference(now.spans, sound.spans)) {
            m_outcome.warnedAt_s = std::min(m_outcome.warnedAt_s.value_or(*at_s), *at_s);
            m_outcome.warned.push_back(id);
            m_outcome.noticed.push_back(fmt::format(
                "{} {} from {} on", name(id), part.kind == "buzzer" ? "sounds" : "lights", time(*at_s)));
        }
    }

    void comparePresses() {
        const DrivePlan& plan = m_sound.circuit.plan;
        for (const auto& [id, part] : m_sound.circuit.parts) {
            const auto sound = pressAssists(plan, m_sound.drive.recording, id);
            const auto now = pressAssists(plan, m_drive.recording, id);
            for (std::size_t i = 0; i < std::min(sound.size(), now.size()); ++i) {
                ++m_outcome.presses;
                if (!now[i].isFull() && sound[i].isFull()) {
                    ++m_outcome.lacking;
                    m_outcome.worstShare = std::min(m_outcome.worstShare, std::max(0.0, now[i].share()));
                    m_outcome.lostAt_s = std::min(m_outcome.lostAt_s.value_or(now[i].at_s), now[i].at_s);
                }
            }
        }
        if (m_outcome.lostAt_s) {
            m_outcome.noticed.push_back(fmt::format("pedal hard at {} (down to {} of the assist)",
                                                    time(*m_outcome.lostAt_s),
                                                    amount(m_outcome.worstShare, QuantityKind::Share)));
        }
    }

    static bool chatters(const DrivePlan& plan, const Channel* state) {
        return state != nullptr && contactChatter(plan, *state).chatters();
    }

    void compareChatter() {
        const DrivePlan& plan = m_sound.circuit.plan;
        for (const auto& [id, part] : m_sound.circuit.parts) {
            if (chatters(plan, m_drive.recording.part(id, probe::kContact)) &&
                !chatters(plan, m_sound.drive.recording.part(id, probe::kContact))) {
                m_outcome.chatters.push_back(id);
                m_outcome.noticed.push_back(name(id) + " chatters");
            }
        }
    }

    void compareFuses() {
        for (const auto& [id, part] : m_sound.circuit.parts) {
            const auto isOpen = [&fuse = id](const Recording& recording) {
                const Channel* share = recording.part(fuse, probe::kOpenShare);
                return share != nullptr && share->extremes(0, recording.duration_s).highest >= 1;
            };
            if (isOpen(m_drive.recording) && !isOpen(m_sound.drive.recording)) {
                m_outcome.openedFuses.push_back(id);
            }
        }
    }

    static double hottest_K(const Recording& recording, const WireId& id) {
        const Channel* temperature = recording.wire(id, probe::kTemperature);
        return temperature == nullptr ? 0 : temperature->extremes(0, recording.duration_s).highest;
    }

    void compareWires() {
        for (const auto& [id, wire] : m_sound.circuit.wires) {
            const double limit_K = findInsulation(wire.insulation)->maxTemperature_K + kOverload_K;
            if (hottest_K(m_drive.recording, id) > limit_K &&
                hottest_K(m_sound.drive.recording, id) <= limit_K) {
                m_outcome.overheatedWires.push_back(id);
            }
        }
    }

    Consequence consequence() const {
        const bool warned =
            m_outcome.lostAt_s && m_outcome.warnedAt_s && *m_outcome.warnedAt_s < *m_outcome.lostAt_s;
        if (m_outcome.lostAt_s && !warned) {
            return Consequence::SilentLoss;
        }
        if (!m_outcome.overheatedWires.empty()) {
            return Consequence::WireOverheats;
        }
        if (m_outcome.lostAt_s) {
            return Consequence::LossAfterWarning;
        }
        return m_outcome.noticed.empty() ? Consequence::Unnoticed : Consequence::Noticed;
    }

    const SoundDrive& m_sound;
    const Circuit& m_broken;
    const DriveResult& m_drive;
    BreakdownOutcome m_outcome;
};

} // namespace

BreakdownOutcome breakdownOutcome(const SoundDrive& sound, const Circuit& broken, const DriveResult& drive) {
    return Comparison(sound, broken, drive).outcome();
}

} // namespace pumpwright
