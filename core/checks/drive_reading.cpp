#include "core/checks/drive_reading.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace pumpwright {
namespace {

double valueAt(const Channel& channel, std::size_t sample) {
    return static_cast<double>(channel.values[sample]);
}

/// Integral of |v| over a straight piece.
double magnitudeArea(double from, double to, double length_s) {
    if (from * to >= 0) {
        return (std::abs(from) + std::abs(to)) / 2 * length_s;
    }
    return (from * from + to * to) / (2 * std::abs(from - to)) * length_s;
}

/// Integral of the magnitude from the first sample to any time.
class MagnitudeIntegral {
public:
    explicit MagnitudeIntegral(const Channel& channel) : m_channel(channel), m_sums(channel.times_s.size()) {
        for (std::size_t i = 1; i < m_sums.size(); ++i) {
            m_sums[i] = m_sums[i - 1] + piece(i, channel.times_s[i]);
        }
    }

    double upTo(double time_s) const {
        const auto& times = m_channel.times_s;
        const auto after = std::upper_bound(times.begin(), times.end(), time_s);
        if (after == times.begin()) {
            return 0;
        }
        const auto next = static_cast<std::size_t>(after - times.begin());
        if (next == times.size()) {
            return m_sums.back() + std::abs(valueAt(m_channel, next - 1)) * (time_s - times.back());
        }
        return m_sums[next - 1] + piece(next, time_s);
    }

private:
    /// From sample `end - 1` to `time_s`, which lies before or at sample `end`.
    double piece(std::size_t end, double time_s) const {
        const double from = valueAt(m_channel, end - 1);
        const double whole_s = m_channel.times_s[end] - m_channel.times_s[end - 1];
        const double length_s = time_s - m_channel.times_s[end - 1];
        if (whole_s <= 0 || length_s <= 0) {
            return 0;
        }
        const double slope = m_channel.probe.stepped ? 0 : (valueAt(m_channel, end) - from) / whole_s;
        return magnitudeArea(from, from + slope * length_s, length_s);
    }

    const Channel& m_channel;
    std::vector<double> m_sums;
};

std::vector<double> crossings(const Channel& channel, bool up) {
    std::vector<double> times;
    for (std::size_t i = 1; i < channel.values.size(); ++i) {
        const bool before = channel.values[i - 1] > 0.5F;
        const bool after = channel.values[i] > 0.5F;
        if (before != after && after == up) {
            times.push_back(channel.times_s[i]);
        }
    }
    return times;
}

} // namespace

Reading highestMean(const Channel& channel, double window_s) {
    if (channel.times_s.empty()) {
        return {};
    }
    const double first_s = channel.times_s.front();
    const double last_s = channel.times_s.back();
    if (last_s <= first_s) {
        return {std::abs(valueAt(channel, 0)), first_s};
    }
    const double window = std::min(window_s, last_s - first_s);
    const MagnitudeIntegral integral(channel);
    Reading highest{-1, first_s};
    // The mean is highest where the window begins or ends at a sample, up to a rest that shrinks with the
    // spacing of the samples.
    for (const double sample_s : channel.times_s) {
        for (const double begin : {sample_s, sample_s - window}) {
            const double from_s = std::clamp(begin, first_s, last_s - window);
            const double mean = (integral.upTo(from_s + window) - integral.upTo(from_s)) / window;
            if (mean > highest.value) {
                highest = {mean, from_s};
            }
        }
    }
    return highest;
}

Reading highestMeanAfter(const Channel& channel, const std::vector<double>& times_s, double span_s,
                         double window_s) {
    const MagnitudeIntegral integral(channel);
    const auto meanFrom = [&](double from_s) {
        return (integral.upTo(from_s + window_s) - integral.upTo(from_s)) / window_s;
    };
    Reading highest;
    for (const double time_s : times_s) {
        const auto& samples_s = channel.times_s;
        auto sample = std::lower_bound(samples_s.begin(), samples_s.end(), time_s);
        double mean = meanFrom(time_s);
        for (; sample != samples_s.end() && *sample <= time_s + span_s; ++sample) {
            mean = std::max({mean, meanFrom(*sample), meanFrom(std::max(time_s, *sample - window_s))});
        }
        if (mean > highest.value) {
            highest = {mean, time_s};
        }
    }
    return highest;
}

double largestMagnitude(const Channel& channel, double from_s, double to_s) {
    if (channel.times_s.empty()) {
        return 0;
    }
    const Extremes extremes = channel.extremes(from_s, to_s);
    return std::max(std::abs(extremes.lowest), std::abs(extremes.highest));
}

std::vector<double> risings(const Channel& channel) {
    return crossings(channel, true);
}

std::vector<double> fallings(const Channel& channel) {
    return crossings(channel, false);
}

std::vector<TimeSpan> spansAbove(const Channel& channel, double threshold, double bridged_s) {
    std::vector<TimeSpan> spans;
    for (std::size_t i = 0; i < channel.values.size(); ++i) {
        if (std::abs(valueAt(channel, i)) < threshold) {
            continue;
        }
        const double end_s = channel.probe.stepped && i + 1 < channel.times_s.size() ? channel.times_s[i + 1]
                                                                                     : channel.times_s[i];
        const bool wasAbove = i > 0 && std::abs(valueAt(channel, i - 1)) >= threshold;
        if (!spans.empty() && (wasAbove || channel.times_s[i] - spans.back().to_s < bridged_s)) {
            spans.back().to_s = end_s;
        } else {
            spans.push_back({channel.times_s[i], end_s});
        }
    }
    return spans;
}

} // namespace pumpwright
