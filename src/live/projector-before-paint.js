// Before the first paint of a figure that stands alone: whether it is shown to a class.
if (location.search === '?projector') document.documentElement.dataset.projector = '';
