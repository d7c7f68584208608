#include "core/simulate/recording.h"
#include "tests/support/catch.h"

using namespace pumpwright;
using Catch::WithinAbs;

namespace {

Channel channelOf(std::vector<double> times_s, std::vector<float> values, bool stepped = false) {
    Channel channel;
    channel.times_s = std::move(times_s);
    channel.values = std::move(values);
    channel.probe.stepped = stepped;
    return channel;
}

} // namespace

TEST_CASE("between samples a channel is a straight line, outside them it stays", "[simulate][recording]") {
    const Channel ramp = channelOf({1, 3}, {2, 6});
    CHECK_THAT(ramp.at(0), WithinAbs(2, 1e-9));
    CHECK_THAT(ramp.at(2), WithinAbs(4, 1e-9));
    CHECK_THAT(ramp.at(9), WithinAbs(6, 1e-9));
}

TEST_CASE("a stepped channel keeps a value until the next sample", "[simulate][recording]") {
    const Channel contact = channelOf({0, 2, 5}, {0, 1, 0}, true);
    CHECK_THAT(contact.at(1.999), WithinAbs(0, 1e-9));
    CHECK_THAT(contact.at(2), WithinAbs(1, 1e-9));
    CHECK_THAT(contact.mean(0, 10), WithinAbs(0.3, 1e-9));
    CHECK_THAT(contact.mean(1, 3), WithinAbs(0.5, 1e-9));
}

TEST_CASE("at a jump a channel has the later value, and its extremes hold both", "[simulate][recording]") {
    const Channel jump = channelOf({0, 2, 2, 4}, {1, 1, 5, 5});
    CHECK_THAT(jump.at(2), WithinAbs(5, 1e-9));
    CHECK_THAT(jump.extremes(2, 2).lowest, WithinAbs(1, 1e-9));
    CHECK_THAT(jump.extremes(2, 2).highest, WithinAbs(5, 1e-9));
    CHECK_THAT(jump.mean(0, 4), WithinAbs(3, 1e-9));
    CHECK_THAT(jump.mean(0, 2), WithinAbs(1, 1e-9));
}

TEST_CASE("extremes and mean of a part of a ramp count its cut ends", "[simulate][recording]") {
    const Channel ramp = channelOf({0, 10}, {0, 10});
    CHECK_THAT(ramp.extremes(2, 4).lowest, WithinAbs(2, 1e-9));
    CHECK_THAT(ramp.extremes(2, 4).highest, WithinAbs(4, 1e-9));
    CHECK_THAT(ramp.mean(2, 4), WithinAbs(3, 1e-9));
    CHECK_THAT(ramp.mean(8, 12), WithinAbs(9.5, 1e-9));
}

TEST_CASE("a recording finds its channels by key and nothing else", "[simulate][recording]") {
    Recording recording;
    recording.channels = {channelOf({0}, {1}), channelOf({0}, {2}), channelOf({0}, {3})};
    recording.channels[0].key = {Subject::Part, "K1", probe::kContact};
    recording.channels[1].key = {Subject::Terminal, "K1", "86"};
    recording.channels[2].key = {Subject::Wire, "w1", probe::kCurrent};
    REQUIRE(recording.part({"K1"}, probe::kContact) != nullptr);
    CHECK(recording.terminal({{"K1"}, "86"}) == &recording.channels[1]);
    CHECK(recording.wire({"w1"}, probe::kCurrent) == &recording.channels[2]);
    CHECK(recording.wire({"w2"}, probe::kCurrent) == nullptr);
    CHECK(recording.port({{"K1"}, "86"}) == nullptr);
    CHECK(recording.bytes() >= 3 * (sizeof(double) + sizeof(float)));
}
