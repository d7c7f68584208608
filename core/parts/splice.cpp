#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"
#include "core/units/text.h"

namespace pumpwright {
namespace {

/// Wires that meet in one crimp: one node, and no resistance worth counting.
class SpliceLaw final : public Law {
public:
    void addEquations(const Point&, Equations&) const override {}
};

class SpliceKind final : public PartKind {
public:
    std::string_view id() const override { return "splice"; }
    std::string_view title() const override { return words("Splice"); }
    DrawerGroup group() const override { return DrawerGroup::Connection; }
    std::string_view letter() const override { return "X"; }

    std::vector<TerminalSpec> terminals(const Part&) const override {
        return {{"1", {0, 0}, words("where the wires meet"), 6}};
    }
    std::span<const ParameterSpec> parameters() const override { return {}; }
    Features features(const Part&) const override {
        Features features;
        features.fitting = Fitting::Splice;
        return features;
    }
    std::unique_ptr<Law> law(const Part&, LawContext&) const override {
        return std::make_unique<SpliceLaw>();
    }
};

} // namespace

const PartKind& spliceKind() {
    static const SpliceKind kind;
    return kind;
}

} // namespace pumpwright
