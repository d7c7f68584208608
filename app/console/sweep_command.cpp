#include "app/console/commands.h"
#include "app/console/error_text.h"
#include "app/console/outcome_json.h"
#include "app/console/study_watch.h"
#include "app/console/text_table.h"
#include "core/files/circuit_file.h"
#include "core/sheet/sweep_tables.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

constexpr int kCurvePoints = 21;
constexpr int kMapPoints = 9;

template <class T>
using Use = tl::expected<T, std::string>; ///< or why the command line makes no sense

Use<double> quantity(std::string_view text, const ParameterSpec& spec) {
    const Result<double> value = parseQuantity(text, spec.kind);
    return value ? Use<double>(*value) : tl::unexpected(value.error().text);
}

Use<double> endOfRange(std::string_view text, const Adjustable& what) {
    Use<double> value = quantity(text, *what.spec);
    if (value) {
        if (const Result<double> good = valueInRange(what, *value); !good) {
            return tl::unexpected(good.error().text);
        }
    }
    return value;
}

/// "K2.delay_s=0 s..10 s"
Use<SweepAxis> axisFrom(const Circuit& circuit, std::string_view text, int points) {
    const std::size_t equals = text.find('=');
    const std::size_t dots = text.find("..", equals);
    if (equals == std::string_view::npos || dots == std::string_view::npos) {
        return tl::unexpected(
            fmt::format("--over \"{}\" is no range. Write for example \"K2.delay_s=0 s..10 s\".", text));
    }
    const Result<Adjustable> what = findAdjustable(circuit, text.substr(0, equals));
    if (!what) {
        return tl::unexpected(what.error().text);
    }
    const Use<double> from = endOfRange(text.substr(equals + 1, dots - equals - 1), *what);
    const Use<double> to = from ? endOfRange(text.substr(dots + 2), *what) : from;
    if (!to) {
        return tl::unexpected(to.error());
    }
    if (*from == *to) {
        return tl::unexpected(fmt::format("--over \"{}\" begins where it ends.", text));
    }
    return SweepAxis{*what, *from, *to, points};
}

Use<std::vector<SweepAxis>> axesFrom(const Circuit& circuit, const Request& request) {
    if (request.over.size() > 2) {
        return tl::unexpected(std::string("--over may be given once or twice."));
    }
    const int usual = request.over.size() > 1 ? kMapPoints : kCurvePoints;
    std::vector<SweepAxis> axes;
    for (const std::string& text : request.over) {
        const Use<SweepAxis> axis = axisFrom(circuit, text, request.points > 0 ? request.points : usual);
        if (!axis) {
            return tl::unexpected(axis.error());
        }
        axes.push_back(*axis);
    }
    if (axes.size() > 1 && axes.front().what.name == axes.back().what.name) {
        return tl::unexpected(std::string("--over names the same value twice."));
    }
    if (axes.size() > 1 && axes.front().points * axes.back().points > kMostMapPoints) {
        return tl::unexpected(fmt::format("A map has at most {} points: lower --points.", kMostMapPoints));
    }
    return axes;
}

/// A sweep as the command line asks for it.
struct Asked {
    std::vector<SweepAxis> axes;
    SweepOptions options;
};

Use<Asked> askedFor(const Circuit& circuit, const Request& request) {
    Asked asked;
    asked.options.measure = findMeasure(request.result);
    if (asked.options.measure == nullptr) {
        return tl::unexpected(
            fmt::format("--result \"{}\" is none of the results that --help lists.", request.result));
    }
    Use<std::vector<SweepAxis>> axes = axesFrom(circuit, request);
    if (!axes) {
        return tl::unexpected(axes.error());
    }
    asked.axes = std::move(*axes);
    asked.options.goal = asked.options.measure->goal(circuit);
    if (!request.goodAt.empty()) {
        const Result<double> goal = parseQuantity(request.goodAt, asked.options.measure->kind);
        if (!goal) {
            return tl::unexpected("--good-at: " + goal.error().text);
        }
        asked.options.goal = *goal;
    }
    if (!request.resolution.empty()) {
        const Use<double> resolution = quantity(request.resolution, *asked.axes.front().what.spec);
        if (!resolution || *resolution <= 0) {
            return tl::unexpected("--resolution: " +
                                  (resolution ? "must be more than nothing." : resolution.error()));
        }
        asked.options.resolution = *resolution;
    }
    return asked;
}

Json axesJson(const std::vector<SweepAxis>& axes) {
    Json list = Json::array();
    for (const SweepAxis& axis : axes) {
        list.push_back({{"name", axis.what.name},
                        {"label", axis.what.label},
                        {"unit", siUnit(axis.what.spec->kind)},
                        {"from", axis.from},
                        {"to", axis.to},
                        {"points", axis.points}});
    }
    return list;
}

Json pointJson(const SweepStudy& study, const SweepPoint& point) {
    Json json = Json::object();
    for (std::size_t i = 0; i < study.axes.size(); ++i) {
        json[study.axes[i].what.name] = point.at[i];
    }
    addOutcome(json, point.outcome);
    return json;
}

std::string sweepJson(const Request& request, const Circuit& circuit, const SweepStudy& study,
                      const SweepOptions& options) {
    Json json{{"file", request.file},
              {"checkSum", circuitCheckSum(circuit)},
              {"over", axesJson(study.axes)},
              {"result", options.measure->id},
              {"goodAt", options.goal ? Json(*options.goal) : Json(nullptr)},
              {"resolution", study.resolution},
              {"thresholds", Json::array()},
              {"points", Json::array()}};
    for (const SweepThreshold& threshold : study.thresholds) {
        json["thresholds"].push_back({{"second", threshold.second ? Json(*threshold.second) : Json(nullptr)},
                                      {"bad", threshold.bad},
                                      {"good", threshold.good}});
    }
    for (const SweepPoint& point : study.points) {
        json["points"].push_back(pointJson(study, point));
    }
    return jsonText(json);
}

std::string sweepText(const SweepStudy& study, const SweepOptions& options) {
    std::string text;
    for (const SheetTable& table : sweepTables(study, *options.measure, options.goal)) {
        text += (text.empty() ? "" : "\n") + textTable(table);
    }
    return text;
}

std::string output(const Request& request, const Circuit& circuit, const SweepStudy& study,
                   const SweepOptions& options) {
    if (request.form == OutputForm::Json) {
        return sweepJson(request, circuit, study, options);
    }
    if (request.form == OutputForm::People) {
        return sweepText(study, options);
    }
    std::vector<Json> rows;
    for (const SweepPoint& point : study.points) {
        rows.push_back(pointJson(study, point));
    }
    return flatCsv(rows);
}

} // namespace

Outcome sweepCommand(const Request& request) {
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    Use<Asked> asked = askedFor(*circuit, request);
    if (!asked) {
        return {ExitStatus::BadUse, "", fmt::format("pumpwright: {}\n", asked.error())};
    }
    StudyWatch watch;
    watch.watch(asked->options);
    const SweepStudy study = runSweep(*circuit, asked->axes, asked->options);
    return watch.outcome({ExitStatus::Fine, output(request, *circuit, study, asked->options), ""},
                         request.form);
}

} // namespace pumpwright
