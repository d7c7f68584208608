#include "core/study/drive_summary.h"

#include "core/parts/part_kind.h"

#include <algorithm>
#include <string_view>

namespace pumpwright {
namespace {

/// A stretch of time in which a channel was above a level.
struct Stretch {
    double from_s;
    double to_s;
};

/// The instant between two samples at which the straight line passes the level.
double crossing(double t0, double v0, double t1, double v1, double level) {
    return v1 == v0 ? t1 : t0 + (t1 - t0) * (level - v0) / (v1 - v0);
}

/// Stretches above `level`, with straight lines between samples, or steps for a stepped channel.
std::vector<Stretch> stretchesAbove(const Channel& channel, double level, double end_s) {
    std::vector<Stretch> stretches;
    bool above = false;
    for (std::size_t i = 0; i < channel.times_s.size(); ++i) {
        const auto value = static_cast<double>(channel.values[i]);
        if ((value > level) == above) {
            continue;
        }
        const bool sloped = i > 0 && !channel.probe.stepped;
        const double time_s =
            sloped ? crossing(channel.times_s[i - 1], static_cast<double>(channel.values[i - 1]),
                              channel.times_s[i], value, level)
                   : channel.times_s[i];
        above = !above;
        if (above) {
            stretches.push_back({time_s, end_s});
        } else {
            stretches.back().to_s = time_s;
        }
    }
    return stretches;
}

double totalTime(const std::vector<Stretch>& stretches) {
    double total_s = 0;
    for (const Stretch& stretch : stretches) {
        total_s += stretch.to_s - stretch.from_s;
    }
    return total_s;
}

int mostStartsWithin(const std::vector<Stretch>& stretches, double window_s) {
    std::size_t first = 0;
    std::size_t most = 0;
    for (std::size_t last = 0; last < stretches.size(); ++last) {
        while (stretches[last].from_s - stretches[first].from_s > window_s) {
            ++first;
        }
        most = std::max(most, last - first + 1);
    }
    return static_cast<int>(most);
}

void addVacuum(DriveSummary& summary, const Circuit& circuit, const Recording& recording) {
    for (const auto& [id, part] : circuit.parts) {
        for (const PortSpec& port : kindOf(part).ports(part)) {
            if (const Channel* channel = recording.port({id, port.name})) {
                const Extremes extremes = channel->extremes(0, recording.duration_s);
                summary.vacuum.push_back(
                    {id, port.name, extremes.lowest, extremes.highest, channel->at(recording.duration_s)});
            }
        }
    }
}

/// Gauge vacuum at the first port of a part, or null.
const Channel* vacuumChannel(const PartId& id, const Part& part, const Recording& recording) {
    const std::vector<PortSpec> ports = kindOf(part).ports(part);
    return ports.empty() ? nullptr : recording.port({id, ports.front().name});
}

PressSummary pressSummary(const Press& press, const PartId& id, const Channel* vacuum, const Channel& assist,
                          const Channel* asked, double end_s) {
    const double to_s = std::min(press.at_s + press.hold_s + press.rise_s, end_s);
    PressSummary summary{id, press.at_s, press.force_N, 0, 0, assist.extremes(press.at_s, to_s).highest, 0};
    if (vacuum != nullptr) {
        summary.vacuumBefore_Pa = vacuum->at(press.at_s);
        summary.vacuumLowest_Pa = vacuum->extremes(press.at_s, to_s).lowest;
    }
    if (asked != nullptr) {
        summary.assistAsked_N = asked->extremes(press.at_s, to_s).highest;
    }
    return summary;
}

void addPresses(DriveSummary& summary, const Circuit& circuit, const Recording& recording) {
    for (const Press& press : circuit.plan.presses) {
        for (const auto& [id, part] : circuit.parts) {
            const Channel* assist = recording.part(id, probe::kAssist);
            if (assist != nullptr && press.at_s < recording.duration_s) {
                summary.presses.push_back(pressSummary(press, id, vacuumChannel(id, part, recording), *assist,
                                                       recording.part(id, probe::kAssistAsked),
                                                       recording.duration_s));
            }
        }
    }
}

void addMotors(DriveSummary& summary, const Circuit& circuit, const Recording& recording) {
    constexpr double kStartShare = 0.1; // of the running current: told in the header
    for (const auto& [id, part] : circuit.parts) {
        const std::vector<Load> loads = kindOf(part).features(part).loads;
        const auto motor = std::ranges::find(loads, LoadSort::Motor, &Load::sort);
        const Channel* current = recording.part(id, probe::kCurrent);
        if (motor == loads.end() || current == nullptr) {
            continue;
        }
        const auto running = stretchesAbove(*current, kStartShare * motor->running_A, recording.duration_s);
        summary.motors.push_back({id, static_cast<int>(running.size()), totalTime(running),
                                  current->extremes(0, recording.duration_s).highest});
    }
}

/// The tail of "contact 30-87a", empty for "contact", nothing for other probes.
std::optional<std::string> contactName(const Channel& channel) {
    constexpr std::string_view kStem = probe::kContact;
    const std::string& name = channel.key.name;
    if (channel.key.subject != Subject::Part || !name.starts_with(kStem)) {
        return std::nullopt;
    }
    if (name.size() == kStem.size()) {
        return "";
    }
    return name[kStem.size()] == ' ' ? std::optional<std::string>(name.substr(kStem.size() + 1))
                                     : std::nullopt;
}

void addContacts(DriveSummary& summary, const Recording& recording) {
    constexpr double kClosedAbove = 0.5; // the probe is 0 or 1
    for (const Channel& channel : recording.channels) {
        const auto name = contactName(channel);
        if (!name) {
            continue;
        }
        const auto closed = stretchesAbove(channel, kClosedAbove, recording.duration_s);
        summary.contacts.push_back({PartId{channel.key.id}, *name, static_cast<int>(closed.size()),
                                    totalTime(closed), mostStartsWithin(closed, 1.0)});
    }
}

} // namespace

DriveSummary driveSummary(const Circuit& circuit, const Recording& recording) {
    DriveSummary summary;
    addVacuum(summary, circuit, recording);
    addPresses(summary, circuit, recording);
    addMotors(summary, circuit, recording);
    addContacts(summary, recording);
    return summary;
}

} // namespace pumpwright
