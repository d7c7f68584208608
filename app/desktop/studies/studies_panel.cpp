#include "app/desktop/studies/studies_panel.h"

#include "app/desktop/studies/fit_page.h"
#include "app/desktop/studies/spoken_table.h"
#include "app/desktop/studies/study_page.h"
#include "app/desktop/studies/sweep_page.h"
#include "app/desktop/studies/trials_page.h"
#include "core/sheet/breakdown_table.h"
#include "core/sheet/spread_tables.h"
#include "core/study/spread.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QSpinBox>
#include <QTabWidget>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

constexpr int kFirstCars = 200;
constexpr int kMostCars = 100000;
constexpr double kMostSureTo_percent = 20;

StudyRun::Study breakdownsStudy(const Circuit& circuit, bool pairs) {
    return [circuit, pairs](const StudyOptions& options, const StudyRun::Show& show) -> StudyRun::Tables {
        BreakdownOptions breakdownOptions;
        static_cast<StudyOptions&>(breakdownOptions) = options;
        breakdownOptions.pairs = pairs;
        BreakdownStudy soFar;
        breakdownOptions.partial = [&](const BreakdownOutcome& outcome) {
            soFar.outcomes.push_back(outcome);
            show([&] { return StudyRun::Tables{breakdownTable(circuit, soFar, inUsersLanguage)}; });
        };
        return {breakdownTable(circuit, runBreakdowns(circuit, breakdownOptions), inUsersLanguage)};
    };
}

/// A page that asks for more room than there is must not make the window larger.
void addScrolled(QTabWidget& pages, QWidget* page, const QString& name) {
    auto* area = new QScrollArea;
    area->setAccessibleName(name);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus); // it follows the focus of what it holds
    area->setWidget(page);
    pages.addTab(area, name);
}

StudyRun::Study spreadStudy(const Circuit& circuit, int cars, double sureTo) {
    return [circuit, cars, sureTo](const StudyOptions& options, const StudyRun::Show& show) {
        SpreadOptions spreadOptions;
        static_cast<StudyOptions&>(spreadOptions) = options;
        spreadOptions.count = static_cast<std::size_t>(cars);
        spreadOptions.sureTo = sureTo;
        spreadOptions.partial = [&](const SpreadCar&, const SpreadTally& tally) {
            show([&] { return spreadTables(tally.summary(), inUsersLanguage); });
        };
        return spreadTables(runSpread(circuit, spreadOptions), inUsersLanguage);
    };
}

} // namespace

StudiesPanel::StudiesPanel(Document& document, const PriceList& prices, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent), m_pages(new QTabWidget(this)), m_pairs(new QCheckBox(tr("Two at once"), this)),
      m_trials(new TrialsPage(document, prices, this)), m_sweep(new SweepPage(document, this)),
      m_breakdowns(newBreakdownsPage(document)), m_spread(newSpreadPage(document)),
      m_fit(new FitPage(document, dialogs, this)) {
    m_pages->setDocumentMode(true);
    m_pages->setAccessibleName(tr("Kinds of study"));
    addScrolled(*m_pages, m_trials, tr("Trials"));
    addScrolled(*m_pages, m_sweep, tr("Sweep"));
    addScrolled(*m_pages, m_breakdowns, tr("Breakdowns"));
    addScrolled(*m_pages, m_spread, tr("Spread"));
    addScrolled(*m_pages, m_fit, tr("Bench log"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_pages);
}

StudyPage* StudiesPanel::newBreakdownsPage(Document& document) {
    auto* page = new StudyPage(
        document, tr("Breakdowns"),
        tr("Lets each part, wire and hose fail in turn, and says what the driver notices and whether a "
           "warning comes before assist is lost. The worst comes first."),
        [this](const Circuit& circuit) { return breakdownsStudy(circuit, m_pairs->isChecked()); }, this);
    m_pairs->setToolTip(tr("Lets every two of them fail together; takes longer"));
    page->controls().insertWidget(0, m_pairs);
    return page;
}

StudyPage* StudiesPanel::newSpreadPage(Document& document) {
    auto* cars = new QSpinBox;
    auto* sureTo = new QDoubleSpinBox;
    auto* page = new StudyPage(
        document, tr("Spread"),
        tr("Drives many cars whose parts lie differently within their tolerances, over the same plan."),
        [cars, sureTo](const Circuit& circuit) {
            return spreadStudy(circuit, cars->value(), sureTo->value() / 100);
        },
        this);
    cars->setRange(1, kMostCars);
    cars->setValue(kFirstCars);
    cars->setSuffix(tr(" cars"));
    cars->setAccessibleName(tr("How many cars"));
    sureTo->setRange(0, kMostSureTo_percent);
    sureTo->setDecimals(1);
    sureTo->setPrefix(tr("end when sure to ± "));
    sureTo->setSuffix(tr(" %"));
    sureTo->setSpecialValueText(tr("drive all of them"));
    sureTo->setAccessibleName(tr("End early"));
    sureTo->setToolTip(tr("Ends once both shares are known to this, 95 % sure"));
    page->controls().insertWidget(0, cars);
    page->controls().insertWidget(1, sureTo);
    return page;
}

} // namespace pumpwright
