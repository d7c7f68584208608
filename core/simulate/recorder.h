#pragma once

#include "core/simulate/recording.h"

#include <span>
#include <vector>

namespace pumpwright {

/// Thins the samples of one channel while they come: keeps as few as needed for straight lines between the
/// kept ones to stay within the resolution of all. Peaks stay, because a line that missed one would leave the
/// resolution.
class ChannelThinner {
public:
    explicit ChannelThinner(Channel& channel, double resolution)
        : m_channel(channel), m_resolution(resolution) {}

    void add(double time_s, double value);
    /// The value after a jump, at the time of the last sample: keeps both sides.
    void jump(double time_s, double value);
    /// Keeps the sample that is still held back.
    void flush();
    /// Adds the sample that is still held back to a copy of the channel.
    void copyHeld(Channel& copy) const;

private:
    void keep(double time_s, double value);
    void openAt(double time_s, double value);
    bool narrow(double time_s, double value);

    Channel& m_channel;
    double m_resolution;
    bool m_open = false;
    bool m_held = false;
    double m_keptTime_s = 0;
    double m_keptValue = 0;
    double m_heldTime_s = 0;
    double m_heldValue = 0;
    double m_lowestSlope = 0;
    double m_highestSlope = 0;
};

/// Collects the samples of all channels of a run within a bound of memory.
class Recorder {
public:
    Recorder(std::vector<Channel> channels, std::size_t mostBytes);

    void add(double time_s, std::span<const double> values);
    void jump(double time_s, std::span<const double> values);
    void addEvent(DriveEvent event) { m_events.push_back(std::move(event)); }
    std::size_t channelCount() const { return m_channels.size(); }

    /// A copy of what was kept from `from_s` up to now, with the last sample before it.
    Recording since(double from_s, double now_s) const;
    /// Ends the recording.
    Recording finish(double duration_s);

private:
    void keepWithinBound();
    void makeThinners();

    std::vector<Channel> m_channels;
    std::vector<ChannelThinner> m_thinners;
    std::vector<DriveEvent> m_events;
    std::size_t m_mostBytes;
    double m_coarseness = 1;
    long m_addedSinceLook = 0;
};

} // namespace pumpwright
