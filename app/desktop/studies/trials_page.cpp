#include "app/desktop/studies/trials_page.h"

#include "app/desktop/document/document.h"
#include "app/desktop/panels/table_names.h"
#include "app/desktop/shown_text.h"
#include "app/desktop/studies/study_page.h"
#include "app/desktop/studies/trials_model.h"
#include "core/sheet/references.h"
#include "core/sheet/trial_tables.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

constexpr int kMostStepsOffered = 12;

using Outcomes = std::vector<TrialOutcome>;

StudyRun::Tables tablesOf(const Outcomes& outcomes, const PriceList& prices) {
    return outcomes.empty() ? StudyRun::Tables()
                            : StudyRun::Tables{trialResults(outcomes, prices), trialIdeas(outcomes)};
}

StudyRun::Study trialsStudy(const Circuit& circuit, const PriceList& prices,
                            const std::shared_ptr<HandedOver<Outcomes>>& found) {
    return [circuit, prices, found](const StudyOptions& options, const StudyRun::Show& show) {
        TrialOptions trialOptions;
        static_cast<StudyOptions&>(trialOptions) = options;
        trialOptions.partial = [&](const Outcomes& outcomes) {
            show([&] { return tablesOf(outcomes, prices); });
        };
        const Outcomes outcomes = runTrials(circuit, trialOptions);
        found->put(outcomes);
        return tablesOf(outcomes, prices);
    };
}

} // namespace

TrialsPage::TrialsPage(Document& document, const PriceList& prices, QWidget* parent)
    : QWidget(parent), m_document(document), m_model(new TrialsModel(document, this)),
      m_list(new QTableView(this)), m_make(new QPushButton(tr("Make a trial of…"), this)),
      m_take(new QPushButton(tr("Take into the circuit"), this)),
      m_remove(new QPushButton(tr("Remove"), this)), m_overlay(new QCheckBox(tr("Lay over the chart"), this)),
      m_study(new StudyPage(
          document, tr("Trials"),
          tr("Drives the circuit as it is drawn, and with each trial, over the same plan."),
          [this, prices](const Circuit& circuit) {
              m_found = std::make_shared<HandedOver<Outcomes>>();
              return trialsStudy(circuit, prices, m_found);
          },
          this)) {
    build();
    connect(m_overlay, &QCheckBox::toggled, this, &TrialsPage::showTraces);
    connect(m_study, &StudyPage::tablesChanged, this, &TrialsPage::showTraces);
    connect(m_take, &QPushButton::clicked, this, &TrialsPage::takeCurrent);
    connect(m_remove, &QPushButton::clicked, this, &TrialsPage::removeCurrent);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &TrialsPage::updateEnabled);
    connect(m_model, &QAbstractItemModel::modelReset, this, &TrialsPage::updateEnabled);
    connect(&document.undoStack(), &QUndoStack::indexChanged, this, &TrialsPage::updateEnabled);
    updateEnabled();
}

void TrialsPage::build() {
    m_list->setModel(m_model);
    m_list->setAccessibleName(tr("Trials of the circuit"));
    m_list->verticalHeader()->hide();
    m_list->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    m_list->horizontalHeader()->setSectionResizeMode(TrialsModel::Number, QHeaderView::ResizeToContents);
    m_list->horizontalHeader()->setStretchLastSection(true);
    m_list->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setTabKeyNavigation(false);
    nameHeaders(*m_list);

    auto* steps = new QMenu(m_make);
    m_make->setMenu(steps);
    m_make->setToolTip(tr("Take the last steps back and keep them as a trial"));
    connect(steps, &QMenu::aboutToShow, this, [this, steps] { fillStepMenu(*steps); });
    m_take->setToolTip(tr("Make the chosen trial's changes in the circuit, as one step"));
    m_remove->setToolTip(tr("Remove the chosen trial"));

    auto* about =
        new QLabel(tr("To try an idea, change the circuit, then make a trial of the change."), this);
    about->setTextFormat(Qt::PlainText);
    about->setWordWrap(true);
    auto* buttons = new QGridLayout; // two by two, for languages with long words
    buttons->addWidget(m_make, 0, 0);
    buttons->addWidget(m_take, 1, 0);
    buttons->addWidget(m_remove, 1, 1);
    buttons->setColumnStretch(2, 1);
    auto* left = new QVBoxLayout;
    left->setContentsMargins(8, 8, 0, 4);
    left->addWidget(about);
    left->addWidget(m_list, 1);
    left->addLayout(buttons);
    m_overlay->setToolTip(tr("Show vacuum and pump current of each trial in the Drive chart"));
    m_study->addBelowControls(*m_overlay);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addLayout(left, 2);
    row->addWidget(m_study, 3);
}

void TrialsPage::fillStepMenu(QMenu& menu) {
    menu.clear();
    const QUndoStack& history = m_document.undoStack();
    for (int steps = 1; steps <= std::min(history.index(), kMostStepsOffered); ++steps) {
        const QString text = history.text(history.index() - steps);
        menu.addAction(steps == 1 ? tr("the last step: %1").arg(text)
                                  : tr("the last %1 steps, from: %2").arg(steps).arg(text),
                       this, [this, steps] { m_document.makeTrialOfLast(steps); });
    }
}

std::optional<std::string> TrialsPage::current() const {
    const QModelIndex index = m_list->currentIndex();
    return index.isValid() ? std::optional(m_model->idAt(index.row())) : std::nullopt;
}

void TrialsPage::takeCurrent() {
    if (const auto id = current()) {
        m_document.takeTrial(*id);
    }
}

void TrialsPage::removeCurrent() {
    if (const auto id = current()) {
        m_document.apply({tr("Remove a trial").toStdString(), {Put<std::string, Trial>{*id, nullptr}}});
    }
}

/// The drive of the circuit as it is drawn is in the chart anyway.
void TrialsPage::showTraces() {
    std::vector<OverlayTrace> traces;
    const Outcomes found = m_found && m_overlay->isChecked() ? m_found->value() : Outcomes();
    for (std::size_t i = 1; i < found.size(); ++i) {
        const TrialOutcome& outcome = found[i];
        for (const Channel& channel : outcome.traces) {
            traces.push_back(
                {tr("%1 of trial %2").arg(shown(partName(outcome.circuit, PartId{channel.key.id}))).arg(i),
                 TraceRole::OfTrial, channel});
        }
    }
    Q_EMIT tracesShown(traces);
}

void TrialsPage::updateEnabled() {
    m_make->setEnabled(m_document.undoStack().index() > 0);
    m_take->setEnabled(current().has_value());
    m_remove->setEnabled(current().has_value());
}

} // namespace pumpwright
