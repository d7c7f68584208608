#include "core/checks/fuse_remedy.h"
#include "core/checks/standard_size.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

// How long an inrush lasts: a small motor's 50 to 200 ms, a filament's about 10 ms. Common
// practice, no published source.
constexpr double kMotorInrush_s = 0.2;
constexpr double kLampInrush_s = 0.01;

/// The load behind a fuse whose start brings the fuse nearest to opening, while the others run.
struct Start {
    const LoadPath* path = nullptr;
    double current_A = 0;
    double lasts_s = 0;
    double opens_s = 0;

    double share() const { return path == nullptr ? 0 : lasts_s / opens_s; }
};

double opensAfter_s(const Survey& survey, const FuseRating& fuse, double rating_A, double current_A) {
    const double holds_A = rating_A * fuseAmbientShare(survey.circuit().limits.ambient_K);
    return openingTime_s(fuse.type, current_A / holds_A, FuseEdge::Fast);
}

bool leadsThrough(const LoadPath& path, std::size_t fuse) {
    return std::any_of(path.feed.begin(), path.feed.end(),
                       [&](const LeadStep& step) { return step.branch == fuse; });
}

Start worstStart(const Survey& survey, std::size_t number, const FuseRating& fuse) {
    const auto& expected = survey.expectedCurrents().branches;
    const auto running = expected.find(number);
    Start worst;
    for (const LoadPath& path : survey.loadPaths()) {
        if (running == expected.end() || path.load.inrush_A <= path.load.running_A ||
            !leadsThrough(path, number)) {
            continue;
        }
        Start start{&path, running->second.running_A - path.load.running_A + path.load.inrush_A,
                    path.load.sort == LoadSort::Motor ? kMotorInrush_s : kLampInrush_s, 0};
        start.opens_s = opensAfter_s(survey, fuse, fuse.rating_A, start.current_A);
        worst = start.share() > worst.share() ? start : worst;
    }
    return worst;
}

Remedy remedyFor(const Survey& survey, const Branch& fuse, const FuseRating& facts, const Start& start) {
    for (const double rating_A : fuseRatings_A()) {
        if (rating_A > facts.rating_A &&
            opensAfter_s(survey, facts, rating_A, start.current_A) > start.lasts_s) {
            return fuseWithWires(survey, fuse, rating_A);
        }
    }
    return {say("Give {} a fuse of its own.", nameOf(survey.circuit(), start.path->part)), {}};
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (branch.sort != BranchSort::Fuse) {
            continue;
        }
        const FuseRating& fuse = *survey.features(branch.part).fuse;
        const Start start = worstStart(survey, i, fuse);
        if (start.path == nullptr || start.share() < 1) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {branch.part, start.path->part};
        finding.value = start.lasts_s;
        finding.limit = start.opens_s;
        finding.kind = QuantityKind::Time;
        finding.what =
            say("{} of {} may open after {} of {}, but {} takes that for about {} when it starts.",
                nameOf(survey.circuit(), branch.part), amount(fuse.rating_A, QuantityKind::Current),
                amount(start.opens_s, finding.kind), amount(start.current_A, QuantityKind::Current),
                nameOf(survey.circuit(), start.path->part), amount(start.lasts_s, finding.kind));
        finding.why = say("A fuse at the fast edge of its band opens without a fault, and the load is dead.");
        finding.remedies = {remedyFor(survey, branch, fuse, start)};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kFuseOpensOnInrush{
    "fuse-opens-on-inrush",
    words("Fuse may open on the inrush"),
    SignalWord::Warning,
    words("fast edge of the opening times of blade fuses, data sheets to ISO 8820-3"),
    false,
    check};

} // namespace pumpwright
