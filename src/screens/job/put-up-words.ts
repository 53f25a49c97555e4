export const labels = 'Labels';
export const lookBack = 'Look back';
