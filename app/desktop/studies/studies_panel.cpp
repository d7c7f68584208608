#include "app/desktop/studies/studies_panel.h"

#include "app/desktop/studies/study_page.h"
#include "app/desktop/studies/trials_page.h"
#include "core/sheet/breakdown_table.h"
#include "core/sheet/spread_tables.h"

#include <QHBoxLayout>
#include <QSpinBox>
#include <QTabWidget>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

constexpr int kFirstCars = 200;
constexpr int kMostCars = 100000;

StudyRun::Study breakdownsStudy(const Circuit& circuit) {
    return [circuit](const StudyOptions& options) -> std::vector<SheetTable> {
        BreakdownOptions breakdownOptions;
        static_cast<StudyOptions&>(breakdownOptions) = options;
        return {breakdownTable(circuit, runBreakdowns(circuit, breakdownOptions))};
    };
}

StudyRun::Study spreadStudy(const Circuit& circuit, int cars) {
    return [circuit, cars](const StudyOptions& options) {
        SpreadOptions spreadOptions;
        static_cast<StudyOptions&>(spreadOptions) = options;
        spreadOptions.count = static_cast<std::size_t>(cars);
        return spreadTables(runSpread(circuit, spreadOptions));
    };
}

} // namespace

StudiesPanel::StudiesPanel(Document& document, const PriceList& prices, QWidget* parent)
    : QWidget(parent), m_pages(new QTabWidget(this)), m_trials(new TrialsPage(document, prices, this)),
      m_breakdowns(new StudyPage(
          document, tr("Breakdowns"),
          tr("Lets each part, wire and hose fail in turn, and says what the driver notices and whether a "
             "warning comes before assist is lost. The worst comes first."),
          breakdownsStudy, this)),
      m_spread(newSpreadPage(document)) {
    m_pages->setDocumentMode(true);
    m_pages->setAccessibleName(tr("Kinds of study"));
    m_pages->addTab(m_trials, tr("Trials"));
    m_pages->addTab(m_breakdowns, tr("Breakdowns"));
    m_pages->addTab(m_spread, tr("Spread"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_pages);
}

StudyPage* StudiesPanel::newSpreadPage(Document& document) {
    auto* cars = new QSpinBox;
    auto* page = new StudyPage(
        document, tr("Spread"),
        tr("Drives many cars whose parts lie differently within their tolerances, over the same plan."),
        [cars](const Circuit& circuit) { return spreadStudy(circuit, cars->value()); }, this);
    cars->setRange(1, kMostCars);
    cars->setValue(kFirstCars);
    cars->setSuffix(tr(" cars"));
    cars->setAccessibleName(tr("How many cars"));
    page->controls().insertWidget(0, cars);
    return page;
}

} // namespace pumpwright
