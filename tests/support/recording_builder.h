#pragma once

#include "core/simulate/drive.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace pumpwright {

/// Builds the result of a drive by hand, so that what a rule reads in it is exact.
///
///     DriveResult drive = RecordingBuilder(10)
///         .part("K1", probe::kContact, {{0, 0}, {2, 1}, {5, 0}})  // a contact: stepped
///         .part("K1", probe::kContactCurrent, {{2, 0}, {2, 12}, {2.2, 5.5}, {5, 5.5}, {5, 0}})
///         .drive();
///
/// Two samples at one time are a jump. Contacts and `energised` channels are stepped.
class RecordingBuilder {
public:
    using Samples = std::vector<std::pair<double, double>>;

    explicit RecordingBuilder(double duration_s);

    RecordingBuilder& part(std::string_view reference, std::string_view probeName, Samples samples);
    RecordingBuilder& wire(std::string_view id, std::string_view probeName, Samples samples);
    RecordingBuilder& terminal(std::string_view end, Samples samples);
    RecordingBuilder& port(std::string_view end, Samples samples);

    DriveResult drive() const;

private:
    RecordingBuilder& add(ChannelKey key, Samples samples);

    Recording m_recording;
};

} // namespace pumpwright
