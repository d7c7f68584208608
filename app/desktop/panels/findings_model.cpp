#include "app/desktop/panels/findings_model.h"

#include <algorithm>

namespace pumpwright {

FindingKey findingKey(const Finding& finding) {
    return {finding.rule, finding.subjects()};
}

SelectedObjects subjectsOf(const Finding& finding) {
    return {{finding.parts.begin(), finding.parts.end()},
            {finding.wires.begin(), finding.wires.end()},
            {finding.hoses.begin(), finding.hoses.end()}};
}

void FindingsModel::setFindings(const std::vector<Finding>& findings) {
    // Rows are matched from both ends; only the stretch between is taken out and put in.
    const auto sameKey = [](const Finding& one, const Finding& other) {
        return findingKey(one) == findingKey(other);
    };
    const std::size_t shorter = std::min(m_findings.size(), findings.size());
    std::size_t head = 0;
    while (head < shorter && sameKey(m_findings[head], findings[head])) {
        ++head;
    }
    std::size_t tail = 0;
    while (tail < shorter - head &&
           sameKey(m_findings[m_findings.size() - 1 - tail], findings[findings.size() - 1 - tail])) {
        ++tail;
    }
    const auto at = [](std::size_t row) { return static_cast<int>(row); };
    const auto offset = [](std::size_t row) { return static_cast<std::ptrdiff_t>(row); };
    if (m_findings.size() > head + tail) {
        beginRemoveRows({}, at(head), at(m_findings.size() - tail) - 1);
        m_findings.erase(m_findings.begin() + offset(head), m_findings.end() - offset(tail));
        endRemoveRows();
    }
    if (findings.size() > head + tail) {
        beginInsertRows({}, at(head), at(findings.size() - tail) - 1);
        m_findings.insert(m_findings.begin() + offset(head), findings.begin() + offset(head),
                          findings.end() - offset(tail));
        endInsertRows();
    }
    m_findings = findings;
    if (!m_findings.empty()) {
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
    }
}

const Finding* FindingsModel::finding(const QModelIndex& index) const {
    const auto row = static_cast<std::size_t>(index.row());
    return index.isValid() && row < m_findings.size() ? &m_findings[row] : nullptr;
}

int FindingsModel::openCount() const {
    return static_cast<int>(std::count_if(m_findings.begin(), m_findings.end(),
                                          [](const Finding& one) { return !one.waiver.has_value(); }));
}

int FindingsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_findings.size());
}

QVariant FindingsModel::data(const QModelIndex& index, int role) const {
    const Finding* found = finding(index);
    if (!found) {
        return {};
    }
    switch (role) {
    case Qt::DisplayRole:
    case Qt::AccessibleTextRole:
        return QStringLiteral("%1: %2. %3")
            .arg(translatedWords(signalWordName(found->word)), translatedWords(found->title),
                 translated(found->what));
    case Qt::ToolTipRole:
        return translated(found->what).toHtmlEscaped();
    case SignalWordRole:
        return static_cast<int>(found->word);
    case WaivedRole:
        return found->waiver.has_value();
    case TitleRole:
        return translatedWords(found->title);
    case WhatRole:
        return translated(found->what);
    default:
        return {};
    }
}

QString findingValueText(const Finding& finding, const ShownUnits& units) {
    // There or not there: the sentence has said it already.
    const bool yesOrNo = finding.kind == QuantityKind::Number && finding.value <= 1 && finding.limit <= 1;
    if (yesOrNo) {
        return {};
    }
    return FindingsModel::tr("Found %1, limit %2")
        .arg(quantityTextInBothUnits(finding.value, finding.kind, units),
             quantityTextInBothUnits(finding.limit, finding.kind, units));
}

} // namespace pumpwright
