#include "app/desktop/panels/findings_panel.h"

#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/selection.h"
#include "app/desktop/panels/applied_remedy.h"
#include "app/desktop/panels/finding_delegate.h"
#include "app/desktop/panels/finding_details.h"
#include "app/desktop/preferences.h"

#include <QLabel>
#include <QListView>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

namespace pumpwright {
namespace {

bool refersTo(const Waiver& waiver, const Finding& finding) {
    return waiver.rule == finding.rule && waiver.subjects == finding.subjects();
}

} // namespace

FindingsPanel::FindingsPanel(Document& document, Selection& selection, Analysis& analysis,
                             const Preferences& preferences, QWidget* parent)
    : QWidget(parent), m_document(document), m_selection(selection), m_analysis(analysis),
      m_preferences(preferences), m_model(new FindingsModel(this)), m_summary(new QLabel(this)),
      m_list(new QListView(this)), m_detailsArea(new QScrollArea(this)), m_details(new FindingDetails(this)) {
    build();
    connect(&analysis, &Analysis::findingsChanged, this, &FindingsPanel::takeFindings);
    connect(&analysis, &Analysis::runningChanged, this, [this](bool running) {
        m_summary->setText(summary());
        m_details->setObsolete(running);
    });
    connect(&preferences, &Preferences::changed, this, &FindingsPanel::showCurrent);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
        showCurrent();
        selectSubjects();
    });
    connect(m_list, &QListView::clicked, this, &FindingsPanel::selectSubjects);
    connect(m_details, &FindingDetails::remedyChosen, this,
            [this](const Edit& edit) { m_document.apply(remedyAsDrawn(m_document.circuit(), edit)); });
    connect(m_details, &FindingDetails::instantChosen, &m_analysis, &Analysis::setCursor);
    connect(m_details, &FindingDetails::pageChosen, this, &FindingsPanel::pageChosen);
    connect(m_details, &FindingDetails::waived, this, &FindingsPanel::addWaiver);
    connect(m_details, &FindingDetails::waiverTakenBack, this, &FindingsPanel::removeWaiver);
    takeFindings();
}

void FindingsPanel::build() {
    m_summary->setTextFormat(Qt::PlainText);
    m_summary->setWordWrap(true);
    m_summary->setObjectName(QStringLiteral("findingsSummary"));
    m_summary->setContentsMargins(8, 4, 8, 4);
    m_list->setModel(m_model);
    m_list->setItemDelegate(new FindingDelegate(m_list));
    m_list->setAccessibleName(tr("Findings"));
    m_list->setUniformItemSizes(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_detailsArea->setWidgetResizable(true);
    m_detailsArea->setFrameShape(QFrame::NoFrame);
    m_detailsArea->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_detailsArea->setAccessibleName(tr("Details of the finding"));
    m_detailsArea->setWidget(m_details);
    auto* splitter = new QSplitter(Qt::Vertical, this);
    splitter->setAccessibleName(tr("Findings and details"));
    splitter->addWidget(m_list);
    splitter->addWidget(m_detailsArea);
    splitter->setStretchFactor(0, 1);
    splitter->setStretchFactor(1, 1);
    splitter->setChildrenCollapsible(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_summary);
    column->addWidget(splitter, 1);
}

QString FindingsPanel::summary() const {
    const int count = m_model->openCount();
    if (count == 0) {
        return m_analysis.isRunning() ? tr("Checking…") : tr("No open findings.");
    }
    QStringList words;
    for (const SignalWord word :
         {SignalWord::Danger, SignalWord::Warning, SignalWord::Caution, SignalWord::Notice}) {
        const auto& all = m_analysis.findings();
        const auto ofWord = std::count_if(all.begin(), all.end(), [&](const Finding& one) {
            return one.word == word && !one.waiver.has_value();
        });
        if (ofWord > 0) {
            words << QStringLiteral("%1 %2").arg(ofWord).arg(translatedWords(signalWordName(word)));
        }
    }
    return (count == 1 ? tr("1 finding: %1") : tr("%1 findings: %2").arg(count)).arg(words.join(tr(", ")));
}

void FindingsPanel::takeFindings() {
    m_taking = true;
    m_model->setFindings(m_analysis.findings());
    m_taking = false;
    m_summary->setText(summary());
    showCurrent();
}

void FindingsPanel::showCurrent() {
    m_details->showFinding(current(), m_preferences.units());
    m_detailsArea->setVisible(current() != nullptr); // the list takes the room meanwhile
}

const Finding* FindingsPanel::current() const {
    return m_model->finding(m_list->currentIndex());
}

void FindingsPanel::selectSubjects() {
    // Rows that come and go with a check must not take the selection away.
    if (const Finding* finding = current(); finding && !m_taking) {
        m_selection.show(subjectsOf(*finding));
    }
}

void FindingsPanel::addWaiver(const QString& reason, const QString& initials) {
    const Finding* finding = current();
    if (!finding) {
        return;
    }
    Waivers waivers = m_document.circuit().waivers;
    std::erase_if(waivers, [&](const Waiver& one) { return refersTo(one, *finding); });
    waivers.push_back(
        {finding->rule, finding->subjects(), reason.toStdString(), initials.toStdString(), finding->value});
    m_document.apply({tr("Waive %1").arg(translatedWords(finding->title)).toStdString(),
                      {replaceWaivers(std::move(waivers))}});
}

void FindingsPanel::removeWaiver() {
    const Finding* finding = current();
    if (!finding) {
        return;
    }
    Waivers waivers = m_document.circuit().waivers;
    std::erase_if(waivers, [&](const Waiver& one) { return refersTo(one, *finding); });
    m_document.apply({tr("Take back the waiver of %1").arg(translatedWords(finding->title)).toStdString(),
                      {replaceWaivers(std::move(waivers))}});
}

} // namespace pumpwright
