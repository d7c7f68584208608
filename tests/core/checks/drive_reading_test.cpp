#include "core/checks/drive_reading.h"
#include "tests/support/catch.h"
#include "tests/support/recording_builder.h"

using namespace pumpwright;

namespace {

Channel channelOf(RecordingBuilder::Samples samples, const char* name = probe::kCurrent) {
    return RecordingBuilder(100).part("M1", name, std::move(samples)).drive().recording.channels.front();
}

} // namespace

TEST_CASE("the highest mean of a plateau as long as the window is the plateau", "[checks][reading]") {
    const Channel plateau = channelOf({{0, 0}, {20, 0}, {20, 8}, {25, 8}, {25, 0}, {60, 0}});
    CHECK(highestMean(plateau, 5).value == Approx(8));
    CHECK(highestMean(plateau, 5).at_s == Approx(20));
    CHECK(highestMean(plateau, 10).value == Approx(4));
}

TEST_CASE("the mean counts magnitudes, also through zero", "[checks][reading]") {
    CHECK(highestMean(channelOf({{0, -6}, {10, -6}}), 5).value == Approx(6));
    CHECK(highestMean(channelOf({{0, -4}, {8, 4}}), 8).value == Approx(2));
}

TEST_CASE("a recording shorter than the window is taken whole", "[checks][reading]") {
    CHECK(highestMean(channelOf({{0, 3}, {2, 3}}), 5).value == Approx(3));
    CHECK(highestMean(channelOf({{1, 7}}), 5).value == Approx(7));
    CHECK(highestMean(Channel{}, 5).value == Approx(0));
}

TEST_CASE("risings and fallings are where a contact moves", "[checks][reading]") {
    const Channel contact = channelOf({{0, 1}, {2, 0}, {3, 1}, {3.5, 1}, {7, 0}}, probe::kContact);
    CHECK(risings(contact) == std::vector<double>{3});
    CHECK(fallings(contact) == std::vector<double>{2, 7});
}

TEST_CASE("spans bridge short gaps only", "[checks][reading]") {
    const Channel current =
        channelOf({{0, 5}, {4, 5}, {4, 0}, {4.2, 0}, {4.2, 5}, {6, 5}, {6, 0}, {9, 0}, {9, 5}, {10, 5}});
    const auto spans = spansAbove(current, 2, 0.5);
    REQUIRE(spans.size() == 2);
    CHECK(spans[0].from_s == Approx(0));
    CHECK(spans[0].to_s == Approx(6));
    CHECK(spans[1].length_s() == Approx(1));
    CHECK(spansAbove(current, 2).size() == 3);
}

TEST_CASE("the largest magnitude in a window holds both sides of a jump", "[checks][reading]") {
    const Channel current = channelOf({{0, -9}, {5, -9}, {5, 0}, {10, 2}});
    CHECK(largestMagnitude(current, 4.9999, 5) == Approx(9));
    CHECK(largestMagnitude(current, 6, 10) == Approx(2));
}
