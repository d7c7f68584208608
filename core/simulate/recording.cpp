#include "core/simulate/recording.h"

#include <algorithm>
#include <cassert>

namespace pumpwright {
namespace {

/// Index of the last sample at or before the time; the first one for earlier times.
std::size_t sampleBefore(const std::vector<double>& times_s, double time_s) {
    const auto after = std::upper_bound(times_s.begin(), times_s.end(), time_s);
    return after == times_s.begin() ? 0 : static_cast<std::size_t>(after - times_s.begin()) - 1;
}

} // namespace

double Channel::at(double time_s) const {
    assert(!times_s.empty() && "a channel of a recording has samples");
    const std::size_t before = sampleBefore(times_s, time_s);
    const double value = static_cast<double>(values[before]);
    if (probe.stepped || before + 1 == times_s.size() || time_s <= times_s[before]) {
        return value;
    }
    const double share = (time_s - times_s[before]) / (times_s[before + 1] - times_s[before]);
    return value + share * (static_cast<double>(values[before + 1]) - value);
}

Extremes Channel::extremes(double from_s, double to_s) const {
    Extremes extremes{at(from_s), at(from_s)};
    const auto include = [&](double value) {
        extremes.lowest = std::min(extremes.lowest, value);
        extremes.highest = std::max(extremes.highest, value);
    };
    include(at(to_s));
    auto index =
        static_cast<std::size_t>(std::lower_bound(times_s.begin(), times_s.end(), from_s) - times_s.begin());
    for (; index < times_s.size() && times_s[index] <= to_s; ++index) {
        include(static_cast<double>(values[index]));
    }
    return extremes;
}

double Channel::mean(double from_s, double to_s) const {
    if (!(to_s > from_s)) {
        return at(from_s);
    }
    double area = 0;
    double time_s = from_s;
    double value = at(from_s);
    auto index =
        static_cast<std::size_t>(std::upper_bound(times_s.begin(), times_s.end(), from_s) - times_s.begin());
    for (; index < times_s.size() && times_s[index] < to_s; ++index) {
        const double next = static_cast<double>(values[index]);
        area += (times_s[index] - time_s) * (probe.stepped ? value : 0.5 * (value + next));
        time_s = times_s[index];
        value = next;
    }
    const bool endsOnSample = index < times_s.size() && times_s[index] <= to_s;
    const double last = endsOnSample ? static_cast<double>(values[index]) : at(to_s); // before a jump there
    area += (to_s - time_s) * (probe.stepped ? value : 0.5 * (value + last));
    return area / (to_s - from_s);
}

const Channel* Recording::find(const ChannelKey& key) const {
    const auto found =
        std::lower_bound(channels.begin(), channels.end(), key,
                         [](const Channel& channel, const ChannelKey& k) { return channel.key < k; });
    return found != channels.end() && found->key == key ? &*found : nullptr;
}

const Channel* Recording::part(const PartId& id, std::string_view probeName) const {
    return find({Subject::Part, id.text, std::string(probeName)});
}

const Channel* Recording::wire(const WireId& id, std::string_view probeName) const {
    return find({Subject::Wire, id.text, std::string(probeName)});
}

const Channel* Recording::terminal(const End& end) const {
    return find({Subject::Terminal, end.part.text, end.terminal});
}

const Channel* Recording::port(const End& end) const {
    return find({Subject::Port, end.part.text, end.terminal});
}

std::size_t Recording::bytes() const {
    std::size_t bytes = 0;
    for (const Channel& channel : channels) {
        bytes += channel.times_s.size() * (sizeof(double) + sizeof(float));
    }
    return bytes;
}

} // namespace pumpwright
