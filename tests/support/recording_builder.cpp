#include "tests/support/recording_builder.h"

#include "tests/support/circuit_builder.h"

#include <algorithm>

namespace pumpwright {

RecordingBuilder::RecordingBuilder(double duration_s) {
    m_recording.duration_s = duration_s;
}

RecordingBuilder& RecordingBuilder::part(std::string_view reference, std::string_view probeName,
                                         Samples samples) {
    return add({Subject::Part, std::string(reference), std::string(probeName)}, std::move(samples));
}

RecordingBuilder& RecordingBuilder::wire(std::string_view id, std::string_view probeName, Samples samples) {
    return add({Subject::Wire, std::string(id), std::string(probeName)}, std::move(samples));
}

RecordingBuilder& RecordingBuilder::terminal(std::string_view end, Samples samples) {
    const End at = endOf(end);
    return add({Subject::Terminal, at.part.text, at.terminal}, std::move(samples));
}

RecordingBuilder& RecordingBuilder::port(std::string_view end, Samples samples) {
    const End at = endOf(end);
    return add({Subject::Port, at.part.text, at.terminal}, std::move(samples));
}

DriveResult RecordingBuilder::drive() const {
    DriveResult result;
    result.recording = m_recording;
    std::sort(result.recording.channels.begin(), result.recording.channels.end(),
              [](const Channel& a, const Channel& b) { return a.key < b.key; });
    return result;
}

RecordingBuilder& RecordingBuilder::add(ChannelKey key, Samples samples) {
    Channel channel;
    channel.probe.name = key.name;
    channel.probe.stepped = key.name == probe::kEnergised || key.name == probe::kContact ||
                            key.name.starts_with(std::string(probe::kContact) + " ");
    channel.key = std::move(key);
    for (const auto& [time_s, value] : samples) {
        channel.times_s.push_back(time_s);
        channel.values.push_back(static_cast<float>(value));
    }
    m_recording.channels.push_back(std::move(channel));
    return *this;
}

} // namespace pumpwright
