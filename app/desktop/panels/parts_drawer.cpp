#include "app/desktop/panels/parts_drawer.h"

#include "app/desktop/panels/parts_model.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSortFilterProxyModel>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>
#include <numeric>

namespace pumpwright {
namespace {

/// Lets a row through when every word of the search is somewhere in it.
class PartsFilter final : public QSortFilterProxyModel {
public:
    using QSortFilterProxyModel::QSortFilterProxyModel;

    void setWords(const QStringList& words) {
        m_words = words;
        invalidateFilter();
    }

protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override {
        const QString text = sourceModel()->index(row, 0, parent).data(PartsModel::SearchTextRole).toString();
        return std::all_of(m_words.begin(), m_words.end(),
                           [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
    }

private:
    QStringList m_words;
};

/// The words of a part's name: what people call it, "Relay" of "Relay 30 A, diode inside", and what only
/// tells it from others of its sort.
struct NameWords {
    explicit NameWords(const QString& name) {
        static const QRegularExpression kEndOfCalling(QStringLiteral("[,:]|\\b\\d| with | for |$"));
        const qsizetype end = name.indexOf(kEndOfCalling);
        calling = wordsOf(name.left(end));
        telling = wordsOf(name.mid(end));
    }
    static QStringList wordsOf(const QString& text) {
        static const QRegularExpression kBetweenWords(QStringLiteral("[ ,:]+"));
        return text.split(kBetweenWords, Qt::SkipEmptyParts);
    }

    QStringList calling;
    QStringList telling;
};

/// How well a word fits among these: a whole word counts more than the beginning of one.
int fitAmong(const QString& word, const QStringList& words) {
    if (words.contains(word, Qt::CaseInsensitive)) {
        return 2;
    }
    const bool begins = std::any_of(words.begin(), words.end(), [&](const QString& one) {
        return one.startsWith(word, Qt::CaseInsensitive);
    });
    return begins ? 1 : 0;
}

/// What a part is called counts more than what tells it from others, and most the first and the last word of
/// it: "rel" means a relay, not a timer with delay on release, and "lam" a lamp, not the switch of one.
int fitOf(const QString& word, const NameWords& name) {
    const int calling = fitAmong(word, name.calling);
    if (calling == 0) {
        return fitAmong(word, name.telling);
    }
    const bool isFirst = fitAmong(word, {name.calling.front()}) > 0;
    const bool isLast = fitAmong(word, {name.calling.back()}) > 0;
    return calling + 1 + (isFirst ? 1 : 0) + (isLast ? 1 : 0);
}

} // namespace

PartsDrawer::PartsDrawer(const Catalogue& catalogue, QWidget* parent)
    : QWidget(parent), m_model(new PartsModel(catalogue, this)), m_filtered(new PartsFilter(this)),
      m_search(new QLineEdit(this)), m_list(new QTreeView(this)), m_nothing(new QLabel(this)) {
    m_filtered->setSourceModel(m_model);
    m_filtered->setRecursiveFilteringEnabled(true);
    m_search->setPlaceholderText(tr("Search parts"));
    m_search->setAccessibleName(tr("Search parts"));
    m_search->setToolTip(
        tr("Enter takes the part to the drawing. Ctrl+Enter puts it where there is room and stays here."));
    m_search->setClearButtonEnabled(true);
    m_search->setMinimumHeight(24);
    m_search->installEventFilter(this);
    m_nothing->setText(tr("No part matches. Try another word, such as relay, fuse or hose."));
    m_nothing->setTextFormat(Qt::PlainText);
    m_nothing->setWordWrap(true);
    m_nothing->setVisible(false);
    buildList();

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 4, 4, 4);
    column->addWidget(m_search);
    column->addWidget(m_nothing);
    column->addWidget(m_list, 1);
    connect(m_search, &QLineEdit::textChanged, this, &PartsDrawer::filter);
    connect(m_list, &QTreeView::clicked, this, &PartsDrawer::place);
    m_list->installEventFilter(this);
}

void PartsDrawer::buildList() {
    m_list->setModel(m_filtered);
    m_list->setAccessibleName(tr("Parts"));
    m_list->header()->setAccessibleName(tr("Columns of the parts"));
    m_list->setRootIsDecorated(true);
    m_list->setDragEnabled(true);
    m_list->setDragDropMode(QAbstractItemView::DragOnly);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setTextElideMode(Qt::ElideRight);
    m_list->setIndentation(14);
    m_list->setUniformRowHeights(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setStyleSheet(QStringLiteral("QTreeView::item { min-height: 24px; }"));
    m_list->header()->setStretchLastSection(false);
    m_list->header()->setMinimumSectionSize(24);
    m_list->header()->setSectionResizeMode(PartsModel::Name, QHeaderView::Stretch);
    m_list->header()->setSectionResizeMode(PartsModel::Price, QHeaderView::ResizeToContents);
    for (int row = 0; row < m_filtered->rowCount(); ++row) {
        m_list->setFirstColumnSpanned(row, {}, true);
    }
    m_list->expandAll();
}

void PartsDrawer::filter(const QString& text) {
    const QStringList words = text.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    static_cast<PartsFilter*>(m_filtered)->setWords(words);
    m_list->expandAll();
    m_nothing->setVisible(m_filtered->rowCount() == 0);
    if (!words.isEmpty() && m_filtered->rowCount() > 0) {
        m_list->setCurrentIndex(bestMatch(words));
    }
}

/// The first of the shown parts whose name fits best: "fuse 10" means the fuse of 10 A, not one whose note
/// has a 10 somewhere, and "pum" a pump.
QModelIndex PartsDrawer::bestMatch(const QStringList& words) const {
    QModelIndex best;
    int most = -1;
    for (int group = 0; group < m_filtered->rowCount(); ++group) {
        const QModelIndex parent = m_filtered->index(group, PartsModel::Name);
        for (int row = 0; row < m_filtered->rowCount(parent); ++row) {
            const QModelIndex index = m_filtered->index(row, PartsModel::Name, parent);
            const NameWords name(index.data().toString());
            const int fit = std::accumulate(words.begin(), words.end(), 0, [&](int sum, const QString& word) {
                return sum + fitOf(word, name);
            });
            if (fit > most) {
                most = fit;
                best = index;
            }
        }
    }
    return best;
}

std::optional<Part> PartsDrawer::prototypeAt(const QModelIndex& shownIndex) const {
    const QModelIndex name = shownIndex.siblingAtColumn(PartsModel::Name);
    return m_model->prototype(m_filtered->mapToSource(name));
}

void PartsDrawer::place(const QModelIndex& shownIndex) {
    if (const auto part = prototypeAt(shownIndex)) {
        Q_EMIT placeRequested(*part);
    }
}

void PartsDrawer::placeWhereFree(const QModelIndex& shownIndex) {
    if (const auto part = prototypeAt(shownIndex)) {
        Q_EMIT placeWhereFreeRequested(*part);
        m_search->selectAll();
    }
}

bool PartsDrawer::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) {
        return QWidget::eventFilter(watched, event);
    }
    const auto* keys = static_cast<QKeyEvent*>(event);
    const int key = keys->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        keys->modifiers().testFlag(Qt::ControlModifier) ? placeWhereFree(m_list->currentIndex())
                                                        : place(m_list->currentIndex());
        return true;
    }
    if (watched == m_search && key == Qt::Key_Down) {
        m_list->setFocus(Qt::OtherFocusReason);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace pumpwright
