#include "core/simulate/recorder.h"
#include "tests/support/catch.h"
#include "tests/support/test_seed.h"

#include <array>
#include <cmath>
#include <random>

using namespace pumpwright;

namespace {

Channel channel(const char* name, double resolution, bool stepped = false) {
    return {{Subject::Part, "p1", name}, {name, name, QuantityKind::Number, stepped, resolution}, {}, {}};
}

} // namespace

TEST_CASE("a thinned channel stays within its resolution of every sample", "[simulate][recorder]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    std::mt19937_64 random(seed);
    std::normal_distribution<double> wobble(0, 0.01);
    Recorder recorder({channel("a", 0.02)}, 64U << 20U);
    std::vector<std::array<double, 2>> all;
    double value = 0;
    for (int i = 0; i < 5000; ++i) {
        value += wobble(random);
        all.push_back({i * 1e-3, value + std::sin(i * 0.01)});
        recorder.add(all.back()[0], std::array{all.back()[1]});
    }
    const Recording recording = recorder.finish(5);
    const Channel& kept = recording.channels.front();
    CHECK(kept.times_s.size() < all.size() / 2);
    for (const auto& [time, expected] : all) {
        CHECK(std::abs(kept.at(time) - expected) <= 0.02 * 1.001);
    }
}

TEST_CASE("a spike of one sample survives", "[simulate][recorder]") {
    Recorder recorder({channel("a", 1)}, 64U << 20U);
    for (int i = 0; i < 1000; ++i) {
        recorder.add(i, std::array{i == 500 ? 330.0 : 12.0});
    }
    const Recording recording = recorder.finish(1000);
    CHECK(recording.channels.front().extremes(0, 1000).highest == Approx(330).margin(1));
    CHECK(recording.channels.front().extremes(0, 499).highest == Approx(12).margin(1));
    CHECK(recording.channels.front().times_s.size() < 10);
}

TEST_CASE("both sides of a jump are kept at one time", "[simulate][recorder]") {
    Recorder recorder({channel("a", 0.01), channel("b", 0, true)}, 64U << 20U);
    recorder.jump(0, std::array{1.0, 0.0});
    recorder.add(1, std::array{1.0, 0.0});
    recorder.jump(1, std::array{5.0, 1.0});
    recorder.add(2, std::array{5.0, 1.0});
    const Recording recording = recorder.finish(2);
    const Channel* a = recording.part(PartId{"p1"}, "a");
    const Channel* b = recording.part(PartId{"p1"}, "b");
    REQUIRE(a != nullptr);
    REQUIRE(b != nullptr);
    CHECK(a->at(0.999) == Approx(1));
    CHECK(a->at(1.001) == Approx(5));
    CHECK(b->at(0.999) == 0);
    CHECK(b->at(1) == 1);
    CHECK(a->mean(0, 2) == Approx(3));
    CHECK(b->mean(0, 2) == Approx(0.5));
}

TEST_CASE("a recording stays within its bound and keeps its extremes", "[simulate][recorder]") {
    constexpr std::size_t kBound = 100'000;
    Recorder recorder({channel("a", 1e-6)}, kBound);
    std::mt19937 random(7);
    std::uniform_real_distribution<double> noise(-1, 1);
    for (int i = 0; i < 100'000; ++i) {
        recorder.add(i, std::array{i == 77'777 ? 50.0 : noise(random)});
    }
    const Recording recording = recorder.finish(100'000);
    CHECK(recording.bytes() < kBound + 2000 * 12);
    CHECK(recording.channels.front().extremes(0, 1e5).highest == Approx(50).margin(4));
    CHECK(recording.channels.front().at(77'777) == Approx(50).margin(4));
}

TEST_CASE("a channel that was not recorded is not found", "[simulate][recorder]") {
    Recorder recorder({channel("a", 1)}, 64U << 20U);
    recorder.add(0, std::array{1.0});
    const Recording recording = recorder.finish(1);
    CHECK(recording.part(PartId{"p1"}, "b") == nullptr);
    CHECK(recording.part(PartId{"p2"}, "a") == nullptr);
    CHECK(recording.wire(WireId{"p1"}, "a") == nullptr);
}
