#include "core/simulate/recorder.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

constexpr long kAddsBetweenLooks = 2000;
constexpr double kCoarsest = 1e12;

double resolutionOf(const Channel& channel, double coarseness) {
    return channel.probe.stepped ? 0 : coarseness * channel.probe.resolution;
}

void sortByKey(std::vector<Channel>& channels) {
    std::sort(channels.begin(), channels.end(),
              [](const Channel& a, const Channel& b) { return a.key < b.key; });
}

} // namespace

void ChannelThinner::keep(double time_s, double value) {
    m_channel.times_s.push_back(time_s);
    m_channel.values.push_back(static_cast<float>(value));
}

void ChannelThinner::openAt(double time_s, double value) {
    m_keptTime_s = time_s;
    m_keptValue = value;
    m_lowestSlope = -std::numeric_limits<double>::infinity();
    m_highestSlope = std::numeric_limits<double>::infinity();
    m_held = false;
}

bool ChannelThinner::narrow(double time_s, double value) {
    const double span_s = time_s - m_keptTime_s;
    const double slope = (value - m_keptValue) / span_s;
    const bool fits = slope >= m_lowestSlope && slope <= m_highestSlope;
    m_lowestSlope = std::max(m_lowestSlope, (value - m_resolution - m_keptValue) / span_s);
    m_highestSlope = std::min(m_highestSlope, (value + m_resolution - m_keptValue) / span_s);
    return fits;
}

void ChannelThinner::add(double time_s, double value) {
    if (!m_open || !(time_s > m_keptTime_s)) {
        jump(time_s, value);
        return;
    }
    if (m_channel.probe.stepped) {
        if (value != m_keptValue) {
            keep(time_s, value);
            openAt(time_s, value);
            return;
        }
    } else if (!narrow(time_s, value)) {
        keep(m_heldTime_s, m_heldValue);
        openAt(m_heldTime_s, m_heldValue);
        narrow(time_s, value);
    }
    m_held = true;
    m_heldTime_s = time_s;
    m_heldValue = value;
}

void ChannelThinner::jump(double time_s, double value) {
    const double last = m_held ? m_heldValue : m_keptValue;
    if (m_open && std::abs(value - last) <= m_resolution) {
        return;
    }
    flush();
    keep(time_s, value);
    openAt(time_s, value);
    m_open = true;
}

void ChannelThinner::flush() {
    if (m_held) {
        keep(m_heldTime_s, m_heldValue);
        openAt(m_heldTime_s, m_heldValue);
    }
}

void ChannelThinner::copyHeld(Channel& copy) const {
    if (m_held) {
        copy.times_s.push_back(m_heldTime_s);
        copy.values.push_back(static_cast<float>(m_heldValue));
    }
}

Recorder::Recorder(std::vector<Channel> channels, std::size_t mostBytes)
    : m_channels(std::move(channels)), m_mostBytes(mostBytes) {
    makeThinners();
}

void Recorder::makeThinners() {
    m_thinners.clear();
    m_thinners.reserve(m_channels.size());
    for (Channel& channel : m_channels) {
        m_thinners.emplace_back(channel, resolutionOf(channel, m_coarseness));
    }
}

void Recorder::add(double time_s, std::span<const double> values) {
    for (std::size_t i = 0; i < m_thinners.size(); ++i) {
        m_thinners[i].add(time_s, values[i]);
    }
    if (++m_addedSinceLook >= kAddsBetweenLooks) {
        keepWithinBound();
    }
}

void Recorder::jump(double time_s, std::span<const double> values) {
    for (std::size_t i = 0; i < m_thinners.size(); ++i) {
        m_thinners[i].jump(time_s, values[i]);
    }
}

void Recorder::keepWithinBound() {
    m_addedSinceLook = 0;
    const auto bytes = [this] {
        std::size_t sum = 0;
        for (const Channel& channel : m_channels) {
            sum += channel.times_s.size() * (sizeof(double) + sizeof(float));
        }
        return sum;
    };
    while (bytes() > m_mostBytes && m_coarseness < kCoarsest) {
        m_coarseness *= 2;
        std::vector<Channel> coarse;
        for (std::size_t i = 0; i < m_channels.size(); ++i) {
            m_thinners[i].flush();
            Channel thinned{m_channels[i].key, m_channels[i].probe, {}, {}};
            ChannelThinner thinner(thinned, resolutionOf(thinned, m_coarseness));
            for (std::size_t k = 0; k < m_channels[i].times_s.size(); ++k) {
                thinner.add(m_channels[i].times_s[k], static_cast<double>(m_channels[i].values[k]));
            }
            thinner.flush();
            coarse.push_back(std::move(thinned));
        }
        m_channels = std::move(coarse);
        makeThinners();
    }
}

Recording Recorder::since(double from_s, double now_s) const {
    Recording recent;
    recent.duration_s = now_s;
    recent.channels.reserve(m_channels.size());
    for (std::size_t i = 0; i < m_channels.size(); ++i) {
        const Channel& whole = m_channels[i];
        const auto after = std::upper_bound(whole.times_s.begin(), whole.times_s.end(), from_s);
        const auto first = std::max<std::ptrdiff_t>(0, after - whole.times_s.begin() - 1);
        Channel& tail = recent.channels.emplace_back(Channel{whole.key, whole.probe, {}, {}});
        tail.times_s.assign(whole.times_s.begin() + first, whole.times_s.end());
        tail.values.assign(whole.values.begin() + first, whole.values.end());
        m_thinners[i].copyHeld(tail);
    }
    sortByKey(recent.channels);
    const auto firstEvent = std::partition_point(
        m_events.begin(), m_events.end(), [&](const DriveEvent& event) { return event.time_s < from_s; });
    recent.events.assign(firstEvent, m_events.end());
    return recent;
}

Recording Recorder::finish(double duration_s) {
    for (ChannelThinner& thinner : m_thinners) {
        thinner.flush();
    }
    Recording recording;
    recording.duration_s = duration_s;
    recording.channels = std::move(m_channels);
    recording.events = std::move(m_events);
    sortByKey(recording.channels);
    return recording;
}

} // namespace pumpwright
