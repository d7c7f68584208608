#include "app/desktop/document/document.h"
#include "app/desktop/studies/studies_panel.h"
#include "app/desktop/studies/study_page.h"
#include "app/desktop/studies/trials_model.h"
#include "app/desktop/studies/trials_page.h"
#include "core/study/breakdowns.h"
#include "core/study/failed_circuit.h"
#include "tests/app/support/one_path.h"
#include "tests/support/catch.h"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QTabWidget>
#include <QTest>

using namespace pumpwright;

namespace {

/// The sample with six trials, its drive cut short.
struct StudiesBench {
    Document document;
    OnePath dialogs;
    StudiesPanel panel{document, PriceList{}, dialogs};

    explicit StudiesBench(double duration_s = 5) {
        REQUIRE(document.open(QStringLiteral("samples/six-ideas.pumpwright")));
        DrivePlan plan = document.circuit().plan;
        plan.duration_s = duration_s;
        document.apply({"Shorten the drive", {Replace<DrivePlan>{std::make_shared<const DrivePlan>(plan)}}});
        panel.show();
        REQUIRE(QTest::qWaitForWindowExposed(&panel));
    }
    void finish(StudyPage& page) {
        REQUIRE(QTest::qWaitFor([&] { return !page.isRunning(); }, 120000));
    }
};

} // namespace

TEST_CASE("trials run side by side, with ideas and results in tables", "[studies]") {
    StudiesBench bench;
    StudyPage& study = bench.panel.trials().study();
    study.run();
    CHECK(study.isRunning());
    bench.finish(study);
    REQUIRE(study.tables().size() == 2);
    CHECK(study.tables()[0].columns.size() == 10); // results between their name, best and worst
    CHECK(study.tables()[1].rows.size() == 7);     // the circuit as drawn, and six trials
    CHECK(study.findChildren<QTableView*>().size() == 2);
}

TEST_CASE("trials are laid over the chart while that is asked for", "[studies]") {
    StudiesBench bench;
    TrialsPage& page = bench.panel.trials();
    std::vector<OverlayTrace> traces;
    QObject::connect(&page, &TrialsPage::tracesShown,
                     [&](const std::vector<OverlayTrace>& shown) { traces = shown; });
    page.study().run();
    bench.finish(page.study());
    CHECK(traces.empty());
    page.overlay().setChecked(true);
    CHECK(traces.size() == 12); // vacuum and pump current of six trials
    CHECK(traces.front().name.contains(QStringLiteral("of trial 1")));
    page.overlay().setChecked(false);
    CHECK(traces.empty());
}

TEST_CASE("pairs of breakdowns are driven on request", "[studies]") {
    StudiesBench bench(600);
    StudyPage& page = bench.panel.breakdowns();
    bench.panel.pairs().setChecked(true);
    page.run();
    auto* cancel = page.findChildren<QPushButton*>().at(1);
    REQUIRE(QTest::qWaitFor([&] { return page.findChild<QProgressBar*>()->value() > 0; }, 60000));
    QTest::mouseClick(cancel, Qt::LeftButton);
    bench.finish(page);
    REQUIRE(page.tables().size() == 1);
    REQUIRE_FALSE(page.tables()[0].rows.empty());
    CHECK(page.tables()[0].rows[0][0].find(" + ") != std::string::npos);
}

TEST_CASE("a spread shows its first band while it runs", "[studies]") {
    StudiesBench bench(2);
    StudyPage& page = bench.panel.spread();
    page.findChild<QSpinBox*>()->setValue(100000);
    page.run();
    REQUIRE(QTest::qWaitFor([&] { return !page.tables().empty(); }, 60000));
    CHECK(page.isRunning());
    CHECK(page.tables()[0].title == "Shares");
    QTest::mouseClick(page.findChildren<QPushButton*>().at(1), Qt::LeftButton);
    bench.finish(page);
    CHECK(page.tables().size() == 3);
}

TEST_CASE("breakdowns show the first rows while they run, and Cancel in the place of Run", "[studies]") {
    StudiesBench bench(3600);
    StudyPage& page = bench.panel.breakdowns();
    bench.panel.findChild<QTabWidget*>()->setCurrentIndex(2);
    const QList<QPushButton*> buttons = page.findChildren<QPushButton*>();
    buttons.at(0)->setFocus();
    page.run();
    CHECK_FALSE(buttons.at(0)->isVisibleTo(&page));
    CHECK(buttons.at(1)->isVisibleTo(&page));
    REQUIRE(QTest::qWaitFor([&] { return !page.tables().empty() && !page.tables()[0].rows.empty(); }, 60000));
    CHECK(page.isRunning());
    QTest::mouseClick(buttons.at(1), Qt::LeftButton);
    bench.finish(page);
    CHECK(buttons.at(0)->isVisibleTo(&page));
    CHECK_FALSE(buttons.at(1)->isVisibleTo(&page));
}

TEST_CASE("a trial is taken into the circuit in one step that undo takes back", "[studies]") {
    StudiesBench bench;
    const Circuit before = bench.document.circuit();
    TrialsPage& page = bench.panel.trials();
    CHECK_FALSE(page.takeButton().isEnabled());
    page.list().selectRow(1);
    REQUIRE(page.takeButton().isEnabled());
    QTest::mouseClick(&page.takeButton(), Qt::LeftButton);
    CHECK(bench.document.circuit().parts.size() > before.parts.size());
    CHECK(bench.document.undoStack().undoText().startsWith(QStringLiteral("Take the trial: Run-on timer")));
    bench.document.undoStack().undo();
    CHECK(bench.document.circuit() == before);
}

TEST_CASE("trials are renamed in place and removed, each as one step", "[studies]") {
    StudiesBench bench;
    QTableView& list = bench.panel.trials().list();
    QAbstractItemModelTester tester(list.model(), QAbstractItemModelTester::FailureReportingMode::Warning);
    const QModelIndex name = list.model()->index(0, TrialsModel::Name);
    CHECK(list.model()->setData(name, QStringLiteral("A larger tank"), Qt::EditRole));
    CHECK(bench.document.circuit().trials.begin()->second.name == "A larger tank");
    CHECK_FALSE(list.model()->setData(name, QStringLiteral("  "), Qt::EditRole));
    list.selectRow(0);
    QTest::mouseClick(&bench.panel.trials().removeButton(), Qt::LeftButton);
    CHECK(bench.document.circuit().trials.size() == 5);
    CHECK(list.model()->rowCount() == 5);
    bench.document.undoStack().undo();
    CHECK(bench.document.circuit().trials.size() == 6);
}

TEST_CASE("a cancelled study shows what it had come to and says so", "[studies]") {
    StudiesBench bench(600);
    StudyPage& page = bench.panel.breakdowns();
    page.run();
    auto* cancel = page.findChildren<QPushButton*>().at(1);
    REQUIRE(cancel->accessibleName() == QStringLiteral("Cancel: Breakdowns"));
    QTest::qWait(100);
    QTest::mouseClick(cancel, Qt::LeftButton);
    REQUIRE(QTest::qWaitFor([&] { return !page.isRunning(); }, 5000));
    REQUIRE(page.tables().size() == 1);
    CHECK(page.tables()[0].rows.size() < breakdownsOf(bench.document.circuit()).size());
}

TEST_CASE("a study of a circuit that has changed since says so", "[studies]") {
    StudiesBench bench;
    StudyPage& page = bench.panel.spread();
    page.run();
    bench.finish(page);
    REQUIRE(page.tables().size() == 3);
    const auto notes = [&] {
        QStringList shown;
        for (const QLabel* label : page.findChildren<QLabel*>()) {
            if (label->isVisibleTo(&page)) {
                shown << label->text();
            }
        }
        return shown.filter(QStringLiteral("run it again")).size();
    };
    CHECK(notes() == 0);
    bench.document.undoStack().undo();
    CHECK(notes() == 1);
}

TEST_CASE("a panel that is closed while its study runs ends the study", "[studies]") {
    auto bench = std::make_unique<StudiesBench>(600);
    bench->panel.spread().run();
    QTest::qWait(30);
    QElapsedTimer clock;
    clock.start();
    bench.reset();
    CHECK(clock.elapsed() < 1000);
}
