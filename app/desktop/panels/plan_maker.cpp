#include "app/desktop/panels/plan_maker.h"

#include "app/desktop/dialogs.h"
#include "app/desktop/document/document.h"
#include "app/desktop/shown_text.h"
#include "core/files/speed_trace_csv.h"
#include "core/study/made_plan.h"

#include <QComboBox>
#include <QGridLayout>
#include <QPushButton>
#include <QSpinBox>

namespace pumpwright {
namespace {

constexpr int kLeastLetters = 12;

} // namespace

PlanMaker::PlanMaker(Document& document, Dialogs& dialogs, QWidget* parent)
    : QWidget(parent), m_document(document), m_dialogs(dialogs), m_sorts(new QComboBox(this)),
      m_seed(new QSpinBox(this)), m_make(new QPushButton(tr("Make"), this)),
      m_trace(new QPushButton(tr("From a speed trace…"), this)) {
    for (const DriveSort& sort : driveSorts()) {
        m_sorts->addItem(translatedWords(sort.label), editable(sort.id));
    }
    m_sorts->setAccessibleName(tr("Sort of drive"));
    m_seed->setRange(1, 999999);
    m_seed->setPrefix(tr("seed "));
    m_seed->setAccessibleName(tr("Seed of the drive"));
    m_seed->setToolTip(tr("Another seed makes another drive of this sort"));
    m_make->setAccessibleName(tr("Make a drive"));
    m_make->setToolTip(tr("Replaces the presses with those of such a drive"));
    m_trace->setToolTip(tr("Takes the presses from a table of time and speed (CSV)"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 6);
    // The list may be narrower than its longest name: the panel has no room to scroll sideways.
    m_sorts->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_sorts->setMinimumContentsLength(kLeastLetters);
    grid->addWidget(m_sorts, 0, 0, 1, 2);
    grid->addWidget(m_seed, 1, 0);
    grid->addWidget(m_make, 1, 1);
    grid->addWidget(m_trace, 2, 0, 1, 2);
    grid->setColumnStretch(0, 1);
    connect(m_make, &QPushButton::clicked, this, &PlanMaker::make);
    connect(m_trace, &QPushButton::clicked, this, &PlanMaker::openTrace);
}

void PlanMaker::make() {
    const DriveSort& sort = driveSorts()[static_cast<std::size_t>(m_sorts->currentIndex())];
    take(madePlan(m_document.circuit(), sort, static_cast<std::uint64_t>(m_seed->value())));
}

void PlanMaker::openTrace() {
    const QString path =
        m_dialogs.pathToOpen({tr("Open a speed trace"), tr("Tables (*.csv *.txt *.tsv)"), {}, {}});
    if (path.isEmpty()) {
        return;
    }
    const Result<SpeedTrace> trace = readSpeedTrace(path.toStdString());
    take(trace ? planFromTrace(m_document.circuit(), *trace) : tl::unexpected(trace.error()));
}

void PlanMaker::take(const Result<DrivePlan>& plan) {
    if (!plan) {
        m_dialogs.showError(tr("The plan cannot be made."), plan.error());
        return;
    }
    m_document.apply(
        {tr("Make the drive plan: %1").arg(shown(plan->name)).toStdString(), {replacePlan(*plan)}});
}

} // namespace pumpwright
