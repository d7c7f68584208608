#include "app/desktop/handbook_window.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFile>
#include <QImageReader>
#include <QPainter>
#include <QPushButton>
#include <QRegularExpression>
#include <QSplitter>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTreeWidget>
#include <QTreeWidgetItemIterator>
#include <QVBoxLayout>

namespace pumpwright {
namespace {

constexpr int kPath = Qt::UserRole;

/// Shows figures no wider than the page, on paper's white.
class Page final : public QTextBrowser {
public:
    using QTextBrowser::QTextBrowser;

    QVariant loadResource(int type, const QUrl& name) override {
        if (type != QTextDocument::ImageResource) {
            return QTextBrowser::loadResource(type, name);
        }
        QImageReader reader(fileOf(name));
        const int widest = std::max(200, viewport()->width() - 60);
        if (reader.size().width() > widest) {
            reader.setScaledSize(reader.size().scaled(widest, reader.size().height(), Qt::KeepAspectRatio));
        }
        const QImage figure = reader.read();
        if (figure.isNull()) {
            return {};
        }
        QImage paper(figure.size(), QImage::Format_RGB32);
        paper.fill(Qt::white);
        QPainter(&paper).drawImage(0, 0, figure);
        return paper;
    }

private:
    /// Beside the page; while a page is being opened, source() is still the one before it.
    QString fileOf(const QUrl& name) const {
        QString file = source().resolved(name).toLocalFile();
        for (const QString& folder : searchPaths()) {
            file = QFileInfo::exists(file) ? file : QDir(folder).filePath(name.path());
        }
        return file;
    }
};

QString textOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// The first heading of a page.
QString titleOf(const QString& path) {
    const QString text = textOf(path);
    return text.section(QLatin1Char('\n'), 0, 0).remove(QRegularExpression(QStringLiteral("^#+ ")));
}

QTreeWidgetItem* newItem(const QString& title, const QString& path) {
    auto* item = new QTreeWidgetItem({title});
    item->setData(0, kPath, path);
    return item;
}

} // namespace

HandbookWindow::HandbookWindow(const QString& docs, QWidget* parent)
    : QDialog(parent), m_docs(QDir(docs).absolutePath()), m_contents(new QTreeWidget(this)),
      m_page(new Page(this)) {
    setWindowTitle(tr("Handbook"));
    m_contents->setAccessibleName(tr("Contents of the handbook"));
    m_contents->setHeaderHidden(true);
    m_page->setAccessibleName(tr("Page of the handbook"));
    m_page->setOpenLinks(false);
    m_page->setSearchPaths({m_docs + QStringLiteral("/handbook"), m_docs + QStringLiteral("/checks")});
    auto* split = new QSplitter(this);
    split->addWidget(m_contents);
    split->addWidget(m_page);
    split->setStretchFactor(1, 1);
    split->setSizes({280, 720});
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    QPushButton* back = buttons->addButton(tr("&Back"), QDialogButtonBox::ActionRole);
    back->setEnabled(false);
    auto* column = new QVBoxLayout(this);
    column->addWidget(split, 1);
    column->addWidget(buttons);
    resize(1040, 720);
    fillContents();
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    connect(back, &QPushButton::clicked, m_page, &QTextBrowser::backward);
    connect(m_page, &QTextBrowser::backwardAvailable, back, &QPushButton::setEnabled);
    connect(m_page, &QTextBrowser::anchorClicked, this, &HandbookWindow::follow);
    connect(m_page, &QTextBrowser::sourceChanged, this, &HandbookWindow::markCurrent);
    connect(m_contents, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        if (item != nullptr) {
            showPage(item->data(0, kPath).toString());
        }
    });
    showPage(QStringLiteral("handbook/README.md"));
}

/// The numbered list of the first page names the chapters; each rule has a page of its own.
void HandbookWindow::fillContents() {
    const QString first = QStringLiteral("handbook/README.md");
    const QString text = textOf(m_docs + QLatin1Char('/') + first);
    m_contents->addTopLevelItem(newItem(titleOf(m_docs + QLatin1Char('/') + first), first));
    static const QRegularExpression chapter(QStringLiteral("^\\d+\\. \\[(.+)\\]\\((.+)\\)$"),
                                            QRegularExpression::MultilineOption);
    for (auto match = chapter.globalMatch(text); match.hasNext();) {
        const auto found = match.next();
        const QString path = QDir::cleanPath(QStringLiteral("handbook/") + found.captured(2));
        m_contents->addTopLevelItem(newItem(found.captured(1), path));
    }
    QTreeWidgetItem* rules = newItem(tr("Findings, one by one"), QStringLiteral("handbook/findings.md"));
    m_contents->addTopLevelItem(rules);
    const QDir folder(m_docs + QStringLiteral("/checks"));
    const QStringList names = folder.entryList({QStringLiteral("*.md")}, QDir::Files, QDir::Name);
    for (const QString& name : names) {
        rules->addChild(newItem(titleOf(folder.filePath(name)), QStringLiteral("checks/") + name));
    }
}

void HandbookWindow::showPage(const QString& path) {
    const QUrl url = QUrl::fromLocalFile(m_docs + QLatin1Char('/') + path);
    if (url != m_page->source()) {
        m_page->setSource(url);
    }
}

void HandbookWindow::showSection(const QString& path, const QString& heading) {
    showPage(path);
    for (QTextBlock block = m_page->document()->begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() > 0 && block.text() == heading) {
            m_page->setTextCursor(QTextCursor(m_page->document()->lastBlock()));
            m_page->ensureCursorVisible(); // from below, so that the heading comes to the top
            m_page->setTextCursor(QTextCursor(block));
            m_page->ensureCursorVisible();
            return;
        }
    }
}

/// Pages only, and only those that came with the program; a folder is shown where the contents list it.
void HandbookWindow::follow(const QUrl& link) {
    const QUrl target = m_page->source().resolved(link);
    const QString file = QDir::cleanPath(target.toLocalFile());
    if (!file.startsWith(m_docs + QLatin1Char('/'))) {
        return;
    }
    if (QFileInfo(file).isDir()) {
        QTreeWidgetItem* rules = m_contents->topLevelItem(m_contents->topLevelItemCount() - 1);
        rules->setExpanded(true);
        m_contents->scrollToItem(rules, QAbstractItemView::PositionAtTop);
    } else if (QFileInfo::exists(file)) {
        m_page->setSource(target);
    }
}

void HandbookWindow::markCurrent() {
    const QString file = m_page->source().toLocalFile();
    const QSignalBlocker quiet(m_contents);
    for (QTreeWidgetItemIterator item(m_contents); *item != nullptr; ++item) {
        if (m_docs + QLatin1Char('/') + (*item)->data(0, kPath).toString() == file) {
            m_contents->setCurrentItem(*item);
            return;
        }
    }
}

} // namespace pumpwright
