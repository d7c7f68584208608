#include "core/study/study_run.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <stdexcept>

using namespace pumpwright;

namespace {

StudyOptions onThreads(unsigned threads) {
    StudyOptions options;
    options.threads = threads;
    return options;
}

} // namespace

TEST_CASE("results come in order, on however many threads they are made", "[study][run]") {
    for (const unsigned threads : {1U, 2U, 7U}) {
        std::vector<std::size_t> taken;
        const std::size_t count = OrderedRun<std::size_t>::run(
            200, onThreads(threads),
            [](std::size_t index, const std::atomic<bool>&) {
                if (index % 7 == 0) {
                    std::this_thread::sleep_for(std::chrono::microseconds(200)); // others overtake it
                }
                return 3 * index;
            },
            [&](std::size_t index, std::size_t outcome) {
                CHECK(outcome == 3 * index);
                taken.push_back(index);
                return true;
            });
        CHECK(count == 200);
        REQUIRE(taken.size() == 200);
        CHECK(std::is_sorted(taken.begin(), taken.end()));
    }
}

TEST_CASE("a run ends when no more results are wanted", "[study][run]") {
    const std::size_t count = OrderedRun<int>::run(
        1000, onThreads(3), [](std::size_t, const std::atomic<bool>&) { return 0; },
        [](std::size_t index, int) { return index < 4; });
    CHECK(count == 5);
}

TEST_CASE("a cancelled run tells its jobs, and hands over what it has", "[study][run]") {
    std::atomic<bool> cancel = false;
    StudyOptions options = onThreads(2);
    options.cancel = &cancel;
    const std::size_t count = OrderedRun<int>::run(
        1000, options,
        [&](std::size_t index, const std::atomic<bool>& stop) {
            cancel = cancel || index == 5;
            while (index >= 5 && !stop) { // it would never end by itself
                std::this_thread::yield();
            }
            return 0;
        },
        [](std::size_t, int) { return true; });
    CHECK(count <= 5);
}

TEST_CASE("after a cancel no result is taken any more, though some wait", "[study][run]") {
    std::atomic<bool> cancel = false;
    std::atomic<int> made = 0;
    StudyOptions options = onThreads(1);
    options.cancel = &cancel;
    const std::size_t count = OrderedRun<int>::run(
        1000, options, [&](std::size_t, const std::atomic<bool>&) { return ++made; },
        [&](std::size_t index, int) {
            while (made < static_cast<int>(index) + 3) { // two more lie there
                std::this_thread::yield();
            }
            cancel = index == 2;
            return true;
        });
    CHECK(count == 3);
}

TEST_CASE("what goes wrong in a job reaches whoever started the run", "[study][run]") {
    const auto run = [] {
        OrderedRun<int>::run(
            10, onThreads(2),
            [](std::size_t index, const std::atomic<bool>&) -> int {
                if (index == 3) {
                    throw std::runtime_error("no memory");
                }
                return 0;
            },
            [](std::size_t, int) { return true; });
    };
    CHECK_THROWS_AS(run(), std::runtime_error);
}

TEST_CASE("progress counts up to the number of jobs", "[study][run]") {
    std::vector<std::size_t> seen;
    StudyOptions options = onThreads(2);
    options.progress = [&](std::size_t done, std::size_t total) {
        CHECK(total == 4);
        seen.push_back(done);
    };
    OrderedRun<int>::run(
        4, options, [](std::size_t, const std::atomic<bool>&) { return 0; },
        [](std::size_t, int) { return true; });
    CHECK(seen == std::vector<std::size_t>{1, 2, 3, 4});
}
