export const screws = 'Screws and anchors';
export const finish = 'How long it cures';
export const labels = 'Labels';
export const lookBack = 'Look back';
export const loads = 'Loads';
