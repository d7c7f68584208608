#include "app/desktop/studies/study_page.h"

#include "app/desktop/document/document.h"
#include "app/desktop/panels/quantity_text.h"
#include "app/desktop/panels/table_names.h"
#include "app/desktop/studies/sheet_table_model.h"
#include "app/desktop/studies/spoken_table.h"

#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

constexpr int kWidestColumn_letters = 34;

QLabel* newText(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

/// As high as its rows, so that only the page scrolls up and down.
void fitToRows(QTableView& view) {
    const int letter = view.fontMetrics().averageCharWidth();
    view.horizontalHeader()->setMaximumSectionSize(kWidestColumn_letters * letter);
    view.resizeColumnsToContents();
    view.resizeRowsToContents();
    const int rows = view.verticalHeader()->length() + view.horizontalHeader()->sizeHint().height();
    view.setFixedHeight(rows + 2 * view.frameWidth() + view.style()->pixelMetric(QStyle::PM_ScrollBarExtent));
}

} // namespace

StudyPage::StudyPage(Document& document, const QString& name, const QString& about, Start start,
                     QWidget* parent)
    : QWidget(parent), m_document(document), m_name(name), m_start(std::move(start)),
      m_button(new QPushButton(tr("Run the study"), this)), m_cancel(new QPushButton(tr("Cancel"), this)),
      m_progress(new QProgressBar(this)), m_note(newText({}, this)), m_controls(new QHBoxLayout),
      m_tableColumn(new QVBoxLayout) {
    build(about);
    connect(m_button, &QPushButton::clicked, this, &StudyPage::run);
    connect(m_cancel, &QPushButton::clicked, &m_run, &StudyRun::cancel);
    connect(&m_run, &StudyRun::progress, this, [this](int done, int total) {
        m_progress->setMaximum(total);
        m_progress->setValue(done);
    });
    connect(&m_run, &StudyRun::partial, this, [this](const StudyRun::Tables& tables) {
        fillTables(tables);
        Q_EMIT tablesChanged();
    });
    connect(&m_run, &StudyRun::finished, this, &StudyPage::showResult);
    connect(&document, &Document::changed, this, &StudyPage::noteChange);
    showRunning(false);
}

StudyPage::~StudyPage() = default;

void StudyPage::build(const QString& about) {
    m_button->setAccessibleName(tr("Run: %1").arg(m_name));
    m_cancel->setAccessibleName(tr("Cancel: %1").arg(m_name));
    m_progress->setAccessibleName(tr("Progress: %1").arg(m_name));
    m_controls->addWidget(m_button);
    m_controls->addWidget(m_cancel);
    m_controls->addStretch(1);

    auto* tables = new QWidget(this);
    tables->setLayout(m_tableColumn);
    m_tableColumn->setContentsMargins(0, 0, 0, 0);
    m_tableColumn->addStretch(1);
    auto* scroll = new QScrollArea(this);
    scroll->setAccessibleName(tr("Results: %1").arg(m_name));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus); // it follows the focus of what it holds
    scroll->setWidget(tables);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 8, 8, 4);
    column->addWidget(newText(about, this));
    column->addLayout(m_controls);
    column->addWidget(m_progress);
    column->addWidget(m_note);
    column->addWidget(scroll, 1);
    m_note->hide();
}

void StudyPage::addBelowControls(QWidget& control) {
    auto* column = qobject_cast<QVBoxLayout*>(layout());
    column->insertWidget(column->indexOf(m_controls) + 1, &control, 0, Qt::AlignLeading);
}

void StudyPage::run() {
    if (m_run.isRunning()) {
        return;
    }
    m_note->hide();
    StudyRun::Study study = m_start(m_document.circuit());
    if (!study) {
        return;
    }
    m_isStale = false;
    m_progress->setRange(0, 0);
    showRunning(true);
    m_run.start(std::move(study));
}

void StudyPage::showNote(const QString& note) {
    m_note->setText(note);
    m_note->setVisible(!note.isEmpty());
}

void StudyPage::showRunning(bool running) {
    const bool hasFocus = m_button->hasFocus() || m_cancel->hasFocus();
    m_button->setVisible(!running);
    m_cancel->setVisible(running);
    if (hasFocus) {
        (running ? m_cancel : m_button)->setFocus(); // one takes the place of the other
    }
    m_progress->setVisible(running);
}

/// Tables that are there already are filled anew, so that neither focus nor place is lost.
void StudyPage::fillTables(const std::vector<SheetTable>& tables) {
    m_tables = tables;
    while (m_views.size() > tables.size()) {
        delete m_views.back().title;
        delete m_views.back().view;
        m_views.pop_back();
    }
    while (m_views.size() < tables.size()) {
        m_views.push_back(newTable());
    }
    for (std::size_t i = 0; i < tables.size(); ++i) {
        QTableView& view = *m_views[i].view;
        const SheetTable table = spokenTable(tables[i]);
        m_views[i].title->setText(shown(table.title));
        static_cast<SheetTableModel*>(view.model())->setTable(table);
        view.setAccessibleName(QStringLiteral("%1: %2").arg(m_name, shown(table.title)));
        nameHeaders(view);
        fitToRows(view);
    }
}

void StudyPage::showResult(const std::vector<SheetTable>& tables, bool whole) {
    showRunning(false);
    fillTables(tables);
    if (!whole) {
        showNote(tr("Cancelled: this is what it had come to."));
    } else {
        showStale();
    }
    Q_EMIT tablesChanged();
}

StudyPage::TitledTable StudyPage::newTable() {
    QLabel* title = newText({}, this);
    title->setContentsMargins(0, 6, 0, 0);
    auto* view = new QTableView(this);
    view->setModel(new SheetTableModel(view));
    view->verticalHeader()->hide();
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->setTabKeyNavigation(false);
    view->setWordWrap(true);
    view->setCornerButtonEnabled(false);
    m_tableColumn->insertWidget(m_tableColumn->count() - 1, title);
    m_tableColumn->insertWidget(m_tableColumn->count() - 1, view);
    return {title, view};
}

void StudyPage::noteChange() {
    m_isStale = true; // also while it runs: it runs on a copy
    showStale();
}

void StudyPage::showStale() {
    if (m_isStale && (!m_tables.empty() || m_run.isRunning())) {
        showNote(tr("The circuit has changed since: run it again."));
    }
}

} // namespace pumpwright
