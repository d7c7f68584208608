#include "app/desktop/chart/sweep_plot.h"
#include "app/desktop/document/document.h"
#include "app/desktop/studies/study_page.h"
#include "app/desktop/studies/sweep_page.h"
#include "app/desktop/studies/value_choice.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <QComboBox>
#include <qcustomplot.h>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QTest>

#include <cmath>

using namespace pumpwright;

namespace {

/// A booster on a tank with one press: lacks assist where the boost ratio asks for more than the vacuum
/// gives.
Circuit booster() {
    DrivePlan plan;
    plan.duration_s = 4;
    plan.initialVacuum_Pa = 70e3;
    plan.presses = {{1, 1.5, 60, 0.25}};
    return CircuitBuilder()
        .part("booster", "A1")
        .part("reservoir", "C1")
        .hose("A1.vacuum", "C1.a")
        .plan(plan)
        .build();
}

struct SweepBench {
    Document document;
    SweepPage page{document};

    SweepBench() {
        document.startNew(booster());
        page.resize(900, 360);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
        page.axis(0).value->choose("A1.boostRatio");
        page.axis(0).from->setText(QStringLiteral("2"));
        page.axis(0).to->setText(QStringLiteral("14"));
        page.points().setValue(5);
        page.result().setCurrentIndex(page.result().findData(QStringLiteral("least-assist")));
    }
    void run() {
        page.study().run();
        REQUIRE(QTest::qWaitFor([&] { return !page.study().isRunning(); }, 60000));
    }
    QString note() {
        QStringList shown;
        for (const QLabel* label : page.study().findChildren<QLabel*>()) {
            if (label->isVisibleTo(&page.study())) {
                shown << label->text();
            }
        }
        return shown.join(QLatin1Char('\n'));
    }
};

} // namespace

TEST_CASE("a sweep shows its threshold, its values and a picture", "[studies][sweep]") {
    SweepBench bench;
    bench.run();
    const std::vector<SheetTable>& tables = bench.page.study().tables();
    REQUIRE(tables.size() == 2);
    CHECK(tables[0].rows.at(0).at(1).find("Good from") == 0);
    CHECK(tables[1].rows.size() == 5);
    CHECK(bench.page.plot().accessibleDescription().contains(QStringLiteral("Good from")));
}

TEST_CASE("two values make a map", "[studies][sweep]") {
    SweepBench bench;
    bench.page.axis(1).value->choose("C1.volume_m3");
    bench.page.points().setValue(3);
    bench.run();
    REQUIRE(bench.page.study().tables().size() == 2);
    CHECK(bench.page.study().tables()[1].columns.size() == 4);
    bench.page.axis(1).value->setCurrentIndex(0); // and back to a curve
    bench.run();
    CHECK(bench.page.study().tables()[1].columns.size() == 2);
}

TEST_CASE("a map fills while it is driven", "[studies][sweep]") {
    SweepBench bench;
    bench.page.axis(1).value->choose("C1.volume_m3");
    bench.page.points().setValue(100);
    bench.page.study().run();
    REQUIRE(QTest::qWaitFor([&] { return !bench.page.study().tables().empty(); }, 60000));
    CHECK(bench.page.study().isRunning());
    REQUIRE(bench.page.plot().plot().plottableCount() > 0);
    const auto* map = qobject_cast<QCPColorMap*>(bench.page.plot().plot().plottable(0));
    REQUIRE(map != nullptr);
    CHECK_FALSE(std::isnan(map->data()->cell(0, 0)));
    CHECK(std::isnan(map->data()->cell(99, 99)));
    CHECK(std::isfinite(map->dataRange().size()));
}

TEST_CASE("a range from half to twice is proposed", "[studies][sweep]") {
    SweepBench bench;
    bench.page.axis(1).value->choose("C1.volume_m3");
    CHECK(bench.page.axis(1).from->text().endsWith(QStringLiteral(" L")));
    CHECK_FALSE(bench.page.axis(1).to->text().isEmpty());
}

TEST_CASE("fields that make no sense are explained, and nothing runs", "[studies][sweep]") {
    SweepBench bench;
    bench.page.axis(0).to->setText(QStringLiteral("99"));
    bench.page.study().run();
    CHECK_FALSE(bench.page.study().isRunning());
    CHECK(bench.note().contains(QStringLiteral("15"))); // the highest that is allowed
    bench.page.axis(0).to->setText(QStringLiteral("2"));
    bench.page.study().run();
    CHECK(bench.note().contains(QStringLiteral("begins where it ends")));
    bench.page.axis(0).value->setEditText(QStringLiteral("nothing of the list"));
    bench.page.study().run();
    CHECK(bench.note().contains(QStringLiteral("from the list")));
}

TEST_CASE("the chosen value stays chosen when the circuit changes", "[studies][sweep]") {
    SweepBench bench;
    Part tank = bench.document.circuit().parts.at(PartId{"C1"});
    tank.reference = "A0"; // comes to stand before it in no list, but changes it
    bench.document.apply({"Rename", {putPart(PartId{"C1"}, tank)}});
    REQUIRE(bench.page.axis(0).value->chosen().has_value());
    CHECK(bench.page.axis(0).value->chosen()->name == "A1.boostRatio");
}

TEST_CASE("a range is proposed for the value that a new circuit brings, and what was typed stays",
          "[studies][sweep]") {
    Document document;
    SweepPage page{document};
    CHECK(page.axis(0).from->text().isEmpty());
    document.startNew(booster());
    REQUIRE(page.axis(0).value->chosen().has_value());
    CHECK(page.axis(0).from->isEnabled());
    CHECK_FALSE(page.axis(0).from->text().isEmpty());
    page.axis(0).from->setText(QStringLiteral("typed"));
    Part tank = document.circuit().parts.at(PartId{"C1"});
    tank.label = "Tank";
    document.apply({"Name the tank", {putPart(PartId{"C1"}, tank)}});
    CHECK(page.axis(0).from->text() == QStringLiteral("typed"));
}
