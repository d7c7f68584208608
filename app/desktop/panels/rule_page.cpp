#include "app/desktop/panels/rule_page.h"

#include "app/desktop/data_files.h"

#include <QDialogButtonBox>
#include <QFile>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace pumpwright {

RulePage::RulePage(QWidget* parent) : QDialog(parent), m_page(new QTextBrowser(this)) {
    setWindowTitle(tr("About the rule"));
    setModal(false);
    m_page->setAccessibleName(tr("Page of the rule"));
    m_page->setOpenLinks(false);
    m_page->document()->setDocumentMargin(16);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_page, 1);
    column->addWidget(buttons);
    resize(640, 560);
}

void RulePage::showRule(const QString& rule) {
    const QString path = QString::fromStdString((docsFolder() / "checks").string()) + QLatin1Char('/') +
                         rule + QStringLiteral(".md");
    QFile file(path);
    if (file.open(QIODevice::ReadOnly)) {
        m_page->setMarkdown(QString::fromUtf8(file.readAll()));
    } else {
        m_page->setPlainText(tr("%1 can't be read: %2. Install the program again, with its pages.")
                                 .arg(path, file.errorString()));
    }
    show();
    raise();
    activateWindow();
}

} // namespace pumpwright
