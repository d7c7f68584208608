#include "core/parts/armature.h"
#include "tests/support/catch.h"

#include <cmath>
#include <vector>

using namespace pumpwright;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

/// An armature with its memory, driven by hand.
struct Driven {
    Armature armature{{0.08, 0.018, 0.004, 0.0015}};
    std::vector<double> memory{Armature::atStart().begin(), Armature::atStart().end()};
    double time_s = 0;

    ArmatureMemory view() const { return {memory}; }
    double due_s() const { return Armature::due_s(view()); }

    /// Lets everything happen that is due at this instant with this current.
    std::vector<std::string> at(double now_s, double current_A) {
        time_s = now_s;
        std::vector<std::string> texts;
        for (int round = 0; round < 10; ++round) {
            for (std::size_t event = 0; event < Armature::kEvents; ++event) {
                if (armature.eventValue(event, current_A, time_s, view()) >= 0) {
                    texts.push_back(armature.happen(event, time_s, memory));
                }
            }
        }
        return texts;
    }
};

using Texts = std::vector<std::string>;

} // namespace

TEST_CASE("an armature at rest closes the break contact only", "[parts][relay]") {
    const Driven relay;
    CHECK(relay.view().state() == ArmatureMemory::Out);
    CHECK_FALSE(relay.view().makeClosed());
    CHECK(relay.view().breakClosed());
    CHECK(std::isinf(relay.due_s()));
}

TEST_CASE("an armature stays at rest just below the pull-in current and goes at it", "[parts][relay]") {
    Driven relay;
    CHECK(relay.at(1, 0.0799).empty());
    CHECK(relay.at(1, 0.08) == Texts{"armature pulls in"});
    CHECK_THAT(relay.due_s(), WithinAbs(1.004, 1e-12));
    CHECK_FALSE(relay.view().makeClosed());
    CHECK_FALSE(relay.view().breakClosed());
    CHECK(relay.at(1.0039, 0.1).empty());
    CHECK(relay.at(1.004, 0.1) == Texts{"contacts close"});
    CHECK(relay.view().makeClosed());
    CHECK_FALSE(relay.view().breakClosed());
}

TEST_CASE("a current the other way round pulls the armature in as well", "[parts][relay]") {
    Driven relay;
    CHECK(relay.at(0, -0.1) == Texts{"armature pulls in"});
}

TEST_CASE("an armature holds between drop-out and pull-in, and goes at drop-out", "[parts][relay]") {
    Driven relay;
    relay.at(0, 0.1);
    relay.at(0.004, 0.1);
    CHECK(relay.at(1, 0.0181).empty());
    CHECK(relay.at(1, 0.018) == Texts{"armature lets go"});
    CHECK(relay.view().makeClosed());
    CHECK(relay.at(1.0015, 0) == Texts{"contacts open"});
    CHECK_FALSE(relay.view().makeClosed());
    CHECK(relay.view().breakClosed());
}

TEST_CASE("an armature that loses its current on the way in turns back without closing", "[parts][relay]") {
    Driven relay;
    relay.at(0, 0.1);
    CHECK(relay.at(0.002, 0.01) == Texts{"armature lets go"});
    // Half the way in, so half the release time back.
    CHECK_THAT(relay.due_s(), WithinAbs(0.002 + 0.00075, 1e-12));
    CHECK(relay.at(0.00275, 0) == Texts{"armature is back"});
    CHECK_FALSE(relay.view().makeClosed());
    CHECK(relay.view().breakClosed());
}

TEST_CASE("an armature that gets its current back on the way out keeps the make contact closed",
          "[parts][relay]") {
    Driven relay;
    relay.at(0, 0.1);
    relay.at(0.004, 0.1);
    relay.at(1, 0);
    CHECK(relay.at(1.0005, 0.09) == Texts{"armature pulls in"});
    // A third of the way out, so a third of the operate time back.
    CHECK_THAT(relay.due_s(), WithinAbs(1.0005 + 0.004 / 3, 1e-12));
    CHECK(relay.view().makeClosed());
    CHECK(relay.at(1.002, 0.09) == Texts{"armature is back"});
    CHECK(relay.view().makeClosed());
}

TEST_CASE("a current between drop-out and pull-in lets a moving armature go on its way", "[parts][relay]") {
    Driven relay;
    relay.at(0, 0.1);
    CHECK(relay.at(0.002, 0.05).empty());
    CHECK(relay.at(0.004, 0.05) == Texts{"contacts close"});
}

TEST_CASE("make and break contact are never closed together", "[parts][relay]") {
    Driven relay;
    for (int step = 0; step < 4000; ++step) {
        const double time_s = step * 1e-4;
        relay.at(time_s, 0.1 * std::sin(97 * time_s) * std::sin(31 * time_s));
        CHECK_FALSE((relay.view().makeClosed() && relay.view().breakClosed()));
    }
}

TEST_CASE("a drop-out above the pull-in does not make an endless loop", "[parts][relay]") {
    Driven relay;
    relay.armature = Armature({0.05, 0.09, 0.004, 0.0015});
    CHECK(relay.at(0, 0.06) == Texts{"armature pulls in"});
    CHECK(relay.at(0.004, 0.06) == Texts{"contacts close"});
}
