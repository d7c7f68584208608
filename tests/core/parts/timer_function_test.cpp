#include "core/parts/kinds.h"
#include "core/parts/timer_function.h"
#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

#include <cmath>
#include <utility>

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::WithinAbs;

namespace {

struct Span {
    double from_s;
    double to_s;
};

/// A timer with a set time of 5 s whose trigger and supply are on in the given spans, on a clock of 10 ms.
class TimerRun {
public:
    TimerRun(const std::string& function, const std::string& retriggerable)
        : m_part(newPart(timerKind(), "K2", {})) {
        m_part.choices["function"] = function;
        m_part.choices["retriggerable"] = retriggerable;
    }

    TimerRun& trigger(std::vector<Span> spans) {
        m_trigger = std::move(spans);
        return *this;
    }
    TimerRun& supply(std::vector<Span> spans) {
        m_supply = std::move(spans);
        return *this;
    }

    /// When the contact was closed, up to 30 s.
    std::vector<Span> closed() const {
        LawBench bench(timerKind(), m_part);
        std::vector<Span> spans;
        bool was = false;
        for (int tick = 0; tick <= 3000; ++tick) {
            const double now_s = tick * 0.01;
            bench.runTo(now_s);
            bench.voltage("15") = on(m_supply, now_s) ? 12 : 0;
            bench.voltage("S") = on(m_trigger, now_s) ? 12 : 0;
            bench.settle();
            const bool is = bench.probe(probe::kContact) > 0;
            if (is && !was) {
                spans.push_back({now_s, 30});
            }
            if (was && !is) {
                spans.back().to_s = now_s;
            }
            was = is;
        }
        return spans;
    }

private:
    static bool on(const std::vector<Span>& spans, double now_s) {
        return std::any_of(spans.begin(), spans.end(), [&](const Span& span) {
            return now_s >= span.from_s - 1e-9 && now_s < span.to_s - 1e-9;
        });
    }

    Part m_part;
    std::vector<Span> m_trigger;
    std::vector<Span> m_supply{{0, 30}};
};

/// Within two ticks of the clock and the inner relay's 5 ms.
void checkSpans(const std::vector<Span>& found, const std::vector<Span>& expected) {
    REQUIRE(found.size() == expected.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        CHECK_THAT(found[i].from_s, WithinAbs(expected[i].from_s, 0.021));
        CHECK_THAT(found[i].to_s, WithinAbs(expected[i].to_s, 0.021));
    }
}

} // namespace

// The functions are those of IEC 60050-445 (time relays): off-delay with control signal 445-01-04, on-delay
// 445-01-02; single shot and retriggerable from memory of the same vocabulary.

TEST_CASE("delay on release: on with the trigger, off the set time after its end", "[parts][timer]") {
    checkSpans(TimerRun("delay-on-release", "yes").trigger({{0, 2}}).closed(), {{0, 7}});
}

TEST_CASE("delay on release, retriggerable: a new trigger starts the delay again with its end",
          "[parts][timer]") {
    checkSpans(TimerRun("delay-on-release", "yes").trigger({{0, 1}, {4, 4.5}}).closed(), {{0, 9.5}});
}

TEST_CASE("delay on release, not retriggerable: a new trigger during the delay is ignored",
          "[parts][timer]") {
    checkSpans(TimerRun("delay-on-release", "no").trigger({{0, 1}, {4, 4.5}}).closed(), {{0, 6}});
    // Even where it outlasts the delay.
    checkSpans(TimerRun("delay-on-release", "no").trigger({{0, 1}, {4, 8}}).closed(), {{0, 6}});
}

TEST_CASE("delay on release, not retriggerable: a trigger after the delay counts", "[parts][timer]") {
    checkSpans(TimerRun("delay-on-release", "no").trigger({{0, 1}, {8, 9}}).closed(), {{0, 6}, {8, 14}});
}

TEST_CASE("single shot: on for the set time from the trigger's begin, however short", "[parts][timer]") {
    checkSpans(TimerRun("single-shot", "no").trigger({{0, 0.1}, {2, 2.1}}).closed(), {{0, 5}});
    checkSpans(TimerRun("single-shot", "no").trigger({{0, 20}}).closed(), {{0, 5}});
}

TEST_CASE("single shot, retriggerable: a new trigger starts the time anew", "[parts][timer]") {
    checkSpans(TimerRun("single-shot", "yes").trigger({{0, 0.1}, {2, 2.1}}).closed(), {{0, 7}});
}

TEST_CASE("delay on make: on once the trigger has lasted for the set time", "[parts][timer]") {
    checkSpans(TimerRun("delay-on-make", "yes").trigger({{0, 8}}).closed(), {{5, 8}});
    checkSpans(TimerRun("delay-on-make", "yes").trigger({{0, 4.9}}).closed(), {});
}

TEST_CASE("delay on make by its supply: on-delay with the trigger tied to the supply", "[parts][timer]") {
    checkSpans(TimerRun("delay-on-make", "yes").supply({{0, 3}}).trigger({{0, 3}}).closed(), {});
    checkSpans(TimerRun("delay-on-make", "yes").supply({{1, 30}}).trigger({{1, 30}}).closed(), {{6, 30}});
}

TEST_CASE("a timer that loses its supply drops out at once and forgets its delay", "[parts][timer]") {
    checkSpans(TimerRun("delay-on-release", "yes").supply({{0, 2}}).trigger({{0, 1}}).closed(), {{0, 2}});
    checkSpans(TimerRun("delay-on-release", "yes").supply({{0, 2}, {3, 30}}).trigger({{0, 1}}).closed(),
               {{0, 2}});
}

TEST_CASE("a trigger that is there when the supply comes counts as a new one", "[parts][timer]") {
    checkSpans(TimerRun("delay-on-release", "yes").supply({{2, 30}}).trigger({{0, 4}}).closed(), {{2, 9}});
}

TEST_CASE("a trigger between its two thresholds keeps the state it had", "[parts][timer]") {
    LawBench bench(timerKind(), newPart(timerKind(), "K2", {}));
    bench.voltage("15") = 12;
    bench.voltage("S") = 5.9;
    bench.settle();
    CHECK(bench.probe(probe::kEnergised) == 0);
    bench.voltage("S") = 6;
    bench.settle();
    CHECK(bench.probe(probe::kEnergised) == 1);
    bench.voltage("S") = 3.1;
    bench.settle();
    CHECK(bench.probe(probe::kRemaining) == 0);
    bench.voltage("S") = 3;
    bench.settle();
    CHECK_THAT(bench.probe(probe::kRemaining), WithinAbs(5, 1e-12));
    bench.runTo(1.5);
    CHECK_THAT(bench.probe(probe::kRemaining), WithinAbs(3.5, 1e-12));
}

TEST_CASE("a timer works at its minimum supply and not below", "[parts][timer]") {
    LawBench bench(timerKind(), newPart(timerKind(), "K2", {}));
    bench.voltage("15") = 12;
    bench.voltage("S") = 12;
    bench.settle();
    bench.voltage("15") = 8;
    bench.settle();
    CHECK(bench.probe(probe::kEnergised) == 1);
    bench.voltage("15") = 7.99;
    bench.settle();
    CHECK(bench.probe(probe::kEnergised) == 0);
    bench.voltage("15") = 8.2; // must rise by the differential before it works again
    bench.settle();
    CHECK(bench.probe(probe::kEnergised) == 0);
}

TEST_CASE("the contact follows the output after the inner relay's operate time", "[parts][timer]") {
    LawBench bench(timerKind(), newPart(timerKind(), "K2", {}));
    bench.voltage("15") = 12;
    bench.voltage("S") = 12;
    bench.settle();
    CHECK(bench.probe(probe::kEnergised) == 1);
    CHECK(bench.probe(probe::kContact) == 0);
    bench.runTo(0.0049);
    CHECK(bench.probe(probe::kContact) == 0);
    bench.runTo(0.0051);
    CHECK(bench.probe(probe::kContact) == 1);
}

TEST_CASE("a timer takes its own current from the supply and its trigger current from the trigger",
          "[parts][timer]") {
    LawBench bench(timerKind(), newPart(timerKind(), "K2", {}));
    bench.voltage("15") = 12;
    bench.voltage("S") = 12;
    // Nearly constant: the fading below a few volts leaves 2 % at 12 V.
    CHECK_THAT(bench.currentInto("15"), WithinAbs(0.020, 0.0005));
    CHECK_THAT(bench.currentInto("S"), WithinAbs(0.0012, 1e-9));
    CHECK_THAT(bench.currentInto("30"), WithinAbs(0, 1e-9));
}
