#pragma once

#include <QDialog>

class QTextBrowser;

namespace pumpwright {

/// The page of one rule, from the files that came with the program: what it looks at, its limit and where
/// that comes from, examples and remedies. Nothing is fetched from anywhere else.
class RulePage final : public QDialog {
    Q_OBJECT

public:
    explicit RulePage(QWidget* parent = nullptr);

    void showRule(const QString& rule);
    QTextBrowser& page() { return *m_page; }

private:
    QTextBrowser* m_page;
};

} // namespace pumpwright
