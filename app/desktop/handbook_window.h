#pragma once

#include <QDialog>
#include <QUrl>

class QTextBrowser;
class QTreeWidget;

namespace pumpwright {

/// The handbook, from the files that came with the program: chapters and the page of every finding on the
/// left, the page on the right. Nothing is fetched from anywhere else.
class HandbookWindow final : public QDialog {
    Q_OBJECT

public:
    /// `docs` holds handbook/README.md, whose list names the chapters, and checks/.
    explicit HandbookWindow(const QString& docs, QWidget* parent = nullptr);

    /// Shows a page of the docs folder: "handbook/findings.md".
    void showPage(const QString& path);
    /// The page at one of its headings.
    void showSection(const QString& path, const QString& heading);
    QTextBrowser& page() { return *m_page; }
    QTreeWidget& contents() { return *m_contents; }

private:
    void fillContents();
    void follow(const QUrl& link);
    void markCurrent();

    QString m_docs;
    QTreeWidget* m_contents;
    QTextBrowser* m_page;
};

} // namespace pumpwright
