#include "app/desktop/circuit/route_field.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <random>
#include <set>

using namespace pumpwright;

namespace {

using Path = std::vector<GridPoint>;

RouteField emptyField() {
    return RouteField(QRect(-40, -40, 81, 81));
}

/// Every step of a path, ends included; fails where a stretch is not along the grid.
Path stepsOf(const Path& corners) {
    Path steps{corners.front()};
    for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
        const GridPoint way = corners[i + 1] - corners[i];
        REQUIRE((way.x == 0) != (way.y == 0));
        const int length = std::abs(way.x) + std::abs(way.y);
        for (int step = 1; step <= length; ++step) {
            steps.push_back(corners[i] + GridPoint{way.x / length * step, way.y / length * step});
        }
    }
    return steps;
}

/// How many stretches of one step two paths share.
int sharedSteps(const Path& a, const Path& b) {
    std::set<std::array<int, 4>> stretches;
    const auto key = [](GridPoint p, GridPoint q) {
        return p.x + p.y < q.x + q.y ? std::array{p.x, p.y, q.x, q.y} : std::array{q.x, q.y, p.x, p.y};
    };
    const Path stepsA = stepsOf(a);
    const Path stepsB = stepsOf(b);
    for (std::size_t i = 0; i + 1 < stepsA.size(); ++i) {
        stretches.insert(key(stepsA[i], stepsA[i + 1]));
    }
    int shared = 0;
    for (std::size_t i = 0; i + 1 < stepsB.size(); ++i) {
        shared += static_cast<int>(stretches.count(key(stepsB[i], stepsB[i + 1])));
    }
    return shared;
}

} // namespace

TEST_CASE("two facing terminals in a row are joined by a straight line", "[route]") {
    const Path path = emptyField().path({{0, 0}, Side::Right}, {{10, 0}, Side::Left}, {});
    CHECK(path == Path{{0, 0}, {10, 0}});
}

TEST_CASE("a line leaves and arrives in the direction of the leads", "[route]") {
    const Path path = emptyField().path({{0, 0}, Side::Up}, {{8, 6}, Side::Up}, {});
    const Path steps = stepsOf(path);
    CHECK(steps[1] == GridPoint{0, -1});
    CHECK(steps[steps.size() - 2] == GridPoint{8, 5});
}

TEST_CASE("a line goes round a body", "[route]") {
    RouteField field = emptyField();
    const QRect body(4, -3, 4, 7);
    field.addBody(body);
    const Path path = field.path({{0, 0}, Side::Right}, {{12, 0}, Side::Left}, {});
    for (const GridPoint step : stepsOf(path)) {
        CHECK_FALSE(body.contains(step.x, step.y));
    }
}

TEST_CASE("a line passes through a body only where there is no other way", "[route]") {
    RouteField field = emptyField();
    field.addBody(QRect(5, -40, 2, 81));
    const Path path = field.path({{0, 0}, Side::Right}, {{12, 0}, Side::Left}, {});
    CHECK(path.front() == GridPoint{0, 0});
    CHECK(path.back() == GridPoint{12, 0});
}

TEST_CASE("two lines do not run on top of each other", "[route]") {
    RouteField field = emptyField();
    const Path first = field.path({{0, 0}, Side::Right}, {{12, 0}, Side::Left}, {});
    field.addPath(first);
    const Path second = field.path({{2, -4}, Side::Down}, {{10, -4}, Side::Down}, {});
    const Path third = field.path({{0, 1}, Side::Up}, {{12, 1}, Side::Up}, {});
    CHECK(sharedSteps(first, second) == 0);
    CHECK(sharedSteps(first, third) == 0);
}

TEST_CASE("a line keeps off terminals that it does not belong to", "[route]") {
    RouteField field = emptyField();
    field.addTerminal({{5, 0}, Side::Up});
    const Path steps = stepsOf(field.path({{0, 0}, Side::Right}, {{10, 0}, Side::Left}, {}));
    CHECK(std::find(steps.begin(), steps.end(), GridPoint{5, 0}) == steps.end());
}

TEST_CASE("fixed corners are kept, in their order", "[route]") {
    const Path bends{{3, 5}, {8, 5}, {8, -2}};
    const Path path = emptyField().path({{0, 0}, Side::Right}, {{12, -2}, Side::Left}, bends);
    const Path steps = stepsOf(path);
    auto at = steps.begin();
    for (const GridPoint bend : bends) {
        at = std::find(at, steps.end(), bend);
        REQUIRE(at != steps.end());
    }
}

TEST_CASE("an end on the other end and a place outside the field still give a path", "[route]") {
    CHECK(emptyField().path({{1, 1}, Side::Up}, {{1, 1}, Side::Up}, {}) == Path{{1, 1}});
    const Path far = emptyField().path({{0, 0}, Side::Right}, {{5000, 7000}, std::nullopt}, {});
    CHECK(far.back() == GridPoint{5000, 7000});
    const RouteField huge(QRect(-1'000'000, -1'000'000, 2'000'001, 2'000'001));
    CHECK(huge.path({{-900'000, 0}, Side::Right}, {{900'000, 5}, Side::Left}, {}).back() ==
          GridPoint{900'000, 5});
}

TEST_CASE("any two ends among random bodies are joined, and again the same way", "[route]") {
    constexpr unsigned kSeed = 4711;
    INFO("seed " << kSeed);
    std::mt19937 random(kSeed);
    const auto within = [&](int limit) { return static_cast<int>(random() % static_cast<unsigned>(limit)); };
    RouteField field = emptyField();
    for (int i = 0; i < 25; ++i) {
        field.addBody(QRect(within(60) - 30, within(60) - 30, 1 + within(6), 1 + within(6)));
    }
    for (int i = 0; i < 100; ++i) {
        const RouteEnd from{{within(60) - 30, within(60) - 30}, static_cast<Side>(within(4))};
        const RouteEnd to{{within(60) - 30, within(60) - 30}, static_cast<Side>(within(4))};
        const Path path = field.path(from, to, {});
        CHECK(path.front() == from.at);
        CHECK(path.back() == to.at);
        CHECK(path == field.path(from, to, {}));
        CHECK_FALSE(stepsOf(path).empty());
        field.addPath(path);
    }
}

TEST_CASE("corners leave out what lies on a straight stretch", "[route]") {
    CHECK(cornersOf({{0, 0}, {1, 0}, {1, 0}, {4, 0}, {4, 2}, {4, 9}}) == Path{{0, 0}, {4, 0}, {4, 9}});
    CHECK(cornersOf({{2, 2}}) == Path{{2, 2}});
}

TEST_CASE("a line goes round a body, but is not searched for between ends very far apart", "[route]") {
    RouteField field(QRect(-20, -20, 1000, 1000));
    field.addBody(QRect(200, -5, 10, 11)); // in the way of the first stretch
    const auto goesThroughBody = [](const Path& path) {
        const Path steps = stepsOf(path);
        return std::any_of(steps.begin(), steps.end(),
                           [](GridPoint at) { return QRect(200, -5, 10, 11).contains(at.x, at.y); });
    };
    const RouteEnd from{{0, 0}, Side::Right};
    const Path near = field.path(from, {{220, 150}, std::nullopt}, {});
    CHECK_FALSE(goesThroughBody(near));
    const Path far = field.path(from, {{300, 300}, std::nullopt}, {});
    CHECK(far == Path{{0, 0}, {300, 0}, {300, 300}});
}
